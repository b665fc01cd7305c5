# Generated from the catalogue by `cargo xtask generate`: do not edit.
from collections.abc import Mapping, Sequence
from typing import Any, Literal, Protocol, TypeAlias, type_check_only

from numpy.typing import ArrayLike

from ._calculation import Calculation as Calculation
from ._calculation import Goal as Goal
from ._calculation import Steps as Steps
from ._calculation import Sweep as Sweep
from ._calculation import Uncertain as Uncertain
from ._calculation import Uncertainty as Uncertainty
from ._calculation import uncertain as uncertain
from ._errors import Error as Error
from ._flamewright import LaidOver as LaidOver
from ._record import Record as Record
from ._record import Value as Value

__all__ = [
    "Assessment",
    "Calculation",
    "Error",
    "Goal",
    "LaidOver",
    "Record",
    "Steps",
    "Sweep",
    "Uncertain",
    "Uncertainty",
    "Value",
    "__version__",
    "assess",
    "calculation",
    "catalogue",
    "evaluate",
    "uncertain",
]

__version__: str

# A quantity of pint, or of any library whose quantities have a number and a unit.
@type_check_only
class _HasUnit(Protocol):
    @property
    def magnitude(self) -> Any: ...
    @property
    def units(self) -> Any: ...

# What an input with a unit takes: a bare number is not among it.
_Quantity: TypeAlias = str | Value | Uncertain | _HasUnit | tuple[ArrayLike, str]
_Number: TypeAlias = _Quantity | ArrayLike

class Assessment:
    data: dict[str, Any]
    text: str
    def __init__(self, data: dict[str, Any], text: str, page: str) -> None: ...
    def to_html(self) -> str: ...
    def _repr_html_(self) -> str: ...

def assess(visit: str | Mapping[str, Any], policy: str | Mapping[str, Any] | None = None) -> Assessment: ...
def calculation(name: str) -> Calculation[Any]: ...
def catalogue() -> list[dict[str, Any]]: ...
def evaluate(name: str, /, **given: Any) -> Record: ...
def __dir__() -> list[str]: ...

@type_check_only
class CombustionAirFlowResult(Record):
    @property
    def gas_rate(self) -> Value:
        """Gas rate at the reference conditions of the calorific value. [m³/h, at reference conditions]"""
    @property
    def air_flow(self) -> Value:
        """Air flow at the same conditions. [m³/h]"""

@type_check_only
class CombustionAirFlow(Calculation[CombustionAirFlowResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        heat_input_net: _Quantity,
        net_calorific_value: _Quantity,
        stoichiometric_air: _Number,
        excess_air_ratio: _Number,
        outputs: Sequence[str] | None = ...,
    ) -> CombustionAirFlowResult:
        """Gas rate and air flow of a burner from its net heat input, the gas and the excess air ratio."""

combustion_air_flow: CombustionAirFlow

@type_check_only
class CombustionProductsResult(Record):
    @property
    def stoichiometric_air(self) -> Value:
        """Dry air needed per volume of gas, both at the same temperature and pressure. [number]"""
    @property
    def stoichiometric_air_real(self) -> Value:
        """The same with the compression factors of gas and air at 15 °C. [number]"""
    @property
    def stoichiometric_oxygen(self) -> Value:
        """Oxygen needed per volume of gas. [number]"""
    @property
    def dry_flue(self) -> Value:
        """Dry flue gas per volume of gas. [number]"""
    @property
    def wet_flue(self) -> Value:
        """Wet flue gas per volume of gas. [number]"""
    @property
    def water_vapour(self) -> Value:
        """Water vapour per volume of gas. [number]"""
    @property
    def carbon_dioxide(self) -> Value:
        """Carbon dioxide per volume of gas. [number]"""
    @property
    def stoichiometric_air_per_mass(self) -> Value:
        """Dry air needed, normal cubic metres per kilogram of fuel. [m³/kg]"""
    @property
    def stoichiometric_oxygen_per_mass(self) -> Value:
        """Oxygen needed, normal cubic metres per kilogram of fuel. [m³/kg]"""
    @property
    def dry_flue_per_mass(self) -> Value:
        """Dry flue gas, normal cubic metres per kilogram of fuel. [m³/kg]"""
    @property
    def wet_flue_per_mass(self) -> Value:
        """Wet flue gas, normal cubic metres per kilogram of fuel. [m³/kg]"""
    @property
    def water_vapour_per_mass(self) -> Value:
        """Water vapour, normal cubic metres per kilogram of fuel. [m³/kg]"""
    @property
    def carbon_dioxide_per_mass(self) -> Value:
        """Carbon dioxide, normal cubic metres per kilogram of fuel. [m³/kg]"""
    @property
    def stoichiometric_air_mass(self) -> Value:
        """Mass of dry air needed over mass of fuel. [kg/kg]"""
    @property
    def air_mass(self) -> Value:
        """Mass of the dry air supplied over mass of fuel. [kg/kg]"""
    @property
    def flue_mass(self) -> Value:
        """Mass of wet flue gas over mass of fuel. [kg/kg]"""
    @property
    def water_mass(self) -> Value:
        """Mass of water in the flue gas over mass of fuel. [kg/kg]"""
    @property
    def humidity_ratio(self) -> Value:
        """Water in the air, mass over mass of dry air. [kg/kg]"""
    @property
    def carbon_dioxide_maximum(self) -> Value:
        """Largest carbon dioxide in dry flue gas: complete combustion without excess air. [%, dry]"""
    @property
    def oxygen_dry(self) -> Value:
        """Oxygen in dry flue gas. [%, dry]"""
    @property
    def carbon_dioxide_dry(self) -> Value:
        """Carbon dioxide in dry flue gas. [%, dry]"""
    @property
    def carbon_dioxide_wet(self) -> Value:
        """Carbon dioxide in wet flue gas. [%, wet]"""
    @property
    def water_wet(self) -> Value:
        """Water vapour in wet flue gas. [%, wet]"""
    @property
    def oxygen_wet(self) -> Value:
        """Oxygen in wet flue gas. [%, wet]"""
    @property
    def nitrogen_wet(self) -> Value:
        """Nitrogen in wet flue gas. [%, wet]"""
    @property
    def argon_wet(self) -> Value:
        """Argon in wet flue gas. [%, wet]"""
    @property
    def sulphur_dioxide_wet(self) -> Value:
        """Sulphur dioxide in wet flue gas. [ppm, wet]"""
    @property
    def water_dew_point(self) -> Value:
        """Temperature at which the flue gas begins to condense. [°C]"""
    @property
    def flue_molar_mass(self) -> Value:
        """Molar mass of the wet flue gas. [g/mol]"""
    @property
    def flue_normal_density(self) -> Value:
        """Density of the wet flue gas at 0 °C and 1013.25 mbar, had nothing condensed. [kg/m³]"""
    @property
    def stoichiometric_air_per_net_heat(self) -> Value:
        """Dry air needed, normal cubic metres per net heat input. [m³/kWh, net]"""
    @property
    def dry_flue_per_net_heat(self) -> Value:
        """Dry flue gas, normal cubic metres per net heat input. [m³/kWh, net]"""
    @property
    def dry_flue_per_gross_heat(self) -> Value:
        """Dry flue gas, normal cubic metres per gross heat input. [m³/kWh, gross]"""
    @property
    def carbon_dioxide_per_gross_heat(self) -> Value:
        """Carbon dioxide from the fuel per gross heat input. [kg/kWh, gross]"""

@type_check_only
class CombustionProducts(Calculation[CombustionProductsResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fuel: str | Mapping[str, Any],
        air: Literal["standard", "21/79"] | None = ...,
        excess_air_ratio: _Number | None = ...,
        air_temperature: _Quantity | None = ...,
        relative_humidity: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        fuel_compression_factor: _Number | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> CombustionProductsResult:
        """Stoichiometric air, dry and wet flue gas, largest carbon dioxide, composition, dew point and amounts per heat input of a fuel, at any excess air ratio from 1, with humid air."""

combustion_products: CombustionProducts

@type_check_only
class FlameTemperatureResult(Record):
    @property
    def flame_temperature(self) -> Value:
        """Adiabatic flame temperature in chemical equilibrium, with dissociation. [°C]"""
    @property
    def flame_temperature_complete(self) -> Value:
        """Adiabatic flame temperature if combustion were complete; too high above about 1500 °C. [°C]"""
    @property
    def carbon_monoxide_wet(self) -> Value:
        """Carbon monoxide in the wet gas in equilibrium at flame temperature; nearly all of it burns on cooling. [ppm, wet]"""
    @property
    def nitric_oxide_wet(self) -> Value:
        """Nitric oxide in the wet gas in equilibrium at flame temperature; a flame has no time to form as much. [ppm, wet]"""
    @property
    def oxygen_wet(self) -> Value:
        """Oxygen in the wet gas in equilibrium at flame temperature. [%, wet]"""
    @property
    def hydrogen_wet(self) -> Value:
        """Hydrogen in the wet gas in equilibrium at flame temperature. [ppm, wet]"""

@type_check_only
class FlameTemperature(Calculation[FlameTemperatureResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fuel: str | Mapping[str, Any],
        air: Literal["standard", "21/79"] | None = ...,
        excess_air_ratio: _Number | None = ...,
        fuel_temperature: _Quantity | None = ...,
        air_temperature: _Quantity | None = ...,
        relative_humidity_20: _Quantity | None = ...,
        pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FlameTemperatureResult:
        """Temperature of the flame if no heat left it, with dissociation in chemical equilibrium and for complete combustion, and the carbon monoxide and nitric oxide that belong to it."""

flame_temperature: FlameTemperature

@type_check_only
class GasEnthalpyResult(Record):
    @property
    def carbon_dioxide(self) -> Value:
        """Carbon dioxide. [kJ/mol]"""
    @property
    def water_vapour(self) -> Value:
        """Water vapour as an ideal gas. [kJ/mol]"""
    @property
    def oxygen(self) -> Value:
        """Oxygen. [kJ/mol]"""
    @property
    def nitrogen(self) -> Value:
        """Nitrogen. [kJ/mol]"""
    @property
    def argon(self) -> Value:
        """Argon. [kJ/mol]"""
    @property
    def sulphur_dioxide(self) -> Value:
        """Sulphur dioxide. [kJ/mol]"""
    @property
    def carbon_monoxide(self) -> Value:
        """Carbon monoxide. [kJ/mol]"""

@type_check_only
class GasEnthalpy(Calculation[GasEnthalpyResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        temperature: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> GasEnthalpyResult:
        """Heat of one mole of each flue gas above 25 °C."""

gas_enthalpy: GasEnthalpy

@type_check_only
class SaturatedWaterResult(Record):
    @property
    def saturation_pressure(self) -> Value:
        """Saturation pressure. [Pa, absolute]"""
    @property
    def heat_of_vaporisation(self) -> Value:
        """Heat of vaporisation. [kJ/kg]"""
    @property
    def liquid_enthalpy(self) -> Value:
        """Enthalpy of the liquid above that at the triple point. [kJ/kg]"""

@type_check_only
class SaturatedWater(Calculation[SaturatedWaterResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        temperature: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> SaturatedWaterResult:
        """Vapour pressure, heat of vaporisation and liquid enthalpy of water from 0 to 100 °C."""

saturated_water: SaturatedWater

@type_check_only
class CarbonMonoxideResult(Record):
    @property
    def carbon_monoxide_ratio(self) -> Value:
        """Carbon monoxide over carbon dioxide, both by volume of the same sample; dilution does not change it. [number]"""
    @property
    def carbon_dioxide_over_monoxide(self) -> Value:
        """Carbon dioxide over carbon monoxide, the 'one to ...' way of stating it. [number]"""
    @property
    def carbon_monoxide_air_free(self) -> Value:
        """Carbon monoxide at zero oxygen, from the oxygen read. [ppm, air-free]"""
    @property
    def carbon_monoxide_at_reference(self) -> Value:
        """Carbon monoxide at reference oxygen, from the oxygen read. [ppm, dry]"""
    @property
    def carbon_monoxide_air_free_from_carbon_dioxide(self) -> Value:
        """Carbon monoxide at zero excess air, from the carbon dioxide read and the fuel's largest one. [ppm, air-free]"""

@type_check_only
class CarbonMonoxide(Calculation[CarbonMonoxideResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        carbon_monoxide_dry: _Quantity,
        carbon_dioxide_dry: _Quantity | None = ...,
        oxygen_dry: _Quantity | None = ...,
        air_oxygen: _Quantity | None = ...,
        reference_oxygen: _Quantity | None = ...,
        carbon_dioxide_maximum: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> CarbonMonoxideResult:
        """CO/CO2 ratio, air-free carbon monoxide from oxygen or from carbon dioxide, and carbon monoxide at a reference oxygen."""

carbon_monoxide: CarbonMonoxide

@type_check_only
class FlueAnalysisResult(Record):
    @property
    def excess_air_ratio(self) -> Value:
        """Excess air ratio: air supplied over air needed, by element balance with the carbon monoxide in it. [number]"""
    @property
    def excess_air(self) -> Value:
        """Excess air: the excess air ratio less one. [%]"""
    @property
    def oxygen_dry_derived(self) -> Value:
        """Oxygen in dry flue gas derived from the carbon dioxide. [%, dry]"""
    @property
    def carbon_dioxide_dry_derived(self) -> Value:
        """Carbon dioxide in dry flue gas derived from the oxygen and the fuel; not an independent reading. [%, dry]"""
    @property
    def carbon_dioxide_closure(self) -> Value:
        """Measured less derived carbon dioxide: nearly zero when oxygen, carbon dioxide and fuel belong together. [%]"""
    @property
    def carbon_dioxide_maximum(self) -> Value:
        """Largest carbon dioxide the fuel can give in dry flue gas. [%, dry]"""
    @property
    def carbon_monoxide_ratio(self) -> Value:
        """Carbon monoxide over carbon dioxide, the measured one where there is one; dilution does not change it. [number]"""
    @property
    def carbon_monoxide_air_free(self) -> Value:
        """Carbon monoxide per dry flue gas of complete combustion without excess air, by exact balance. [ppm, air-free]"""
    @property
    def water_dew_point(self) -> Value:
        """Temperature at which the flue gas begins to condense. [°C]"""
    @property
    def dry_gas_loss(self) -> Value:
        """Heat in the dry flue gas above 25 °C. [%, gross]"""
    @property
    def moisture_loss(self) -> Value:
        """Heat in the water vapour above 25 °C. [%, gross]"""
    @property
    def latent_loss(self) -> Value:
        """Latent heat that leaves with the vapour, less that which came with humid air. [%, gross]"""
    @property
    def condensate_loss(self) -> Value:
        """Heat in the condensate, which leaves at flue temperature. [%, gross]"""
    @property
    def unburnt_loss(self) -> Value:
        """Heat not released because carbon monoxide did not burn. [%, gross]"""
    @property
    def air_credit(self) -> Value:
        """Heat brought by the combustion air above 25 °C; negative where it is colder. [%, gross]"""
    @property
    def fuel_credit(self) -> Value:
        """Heat brought by the fuel gas, taken at air temperature; zero for liquids and solids. [%, gross]"""
    @property
    def flue_loss_net(self) -> Value:
        """Flue loss as short formulae mean it: heat of dry gas and vapour above air temperature, without latent heat and carbon monoxide. [%, net]"""
    @property
    def efficiency_gross(self) -> Value:
        """Combustion efficiency on the gross calorific value: what does not leave by the flue. [%, gross]"""
    @property
    def efficiency_net(self) -> Value:
        """Combustion efficiency on the net calorific value; above 100 % where enough condenses. [%, net]"""
    @property
    def condensate(self) -> Value:
        """Condensate per gross heat input. [kg/kWh, gross]"""

@type_check_only
class FlueAnalysis(Calculation[FlueAnalysisResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fuel: str | Mapping[str, Any],
        carbon_monoxide_dry: _Quantity,
        flue_temperature: _Quantity,
        air_temperature: _Quantity,
        air: Literal["standard", "21/79"] | None = ...,
        oxygen_dry: _Quantity | None = ...,
        carbon_dioxide_dry: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        relative_humidity: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FlueAnalysisResult:
        """Excess air, derived gases, carbon monoxide ratio and air-free, dew point, every loss, condensate and the combustion efficiency on both bases, from oxygen or carbon dioxide, carbon monoxide and temperatures, by exact element and energy balance."""

flue_analysis: FlueAnalysis

@type_check_only
class FlueEmissionsResult(Record):
    @property
    def excess_air_ratio(self) -> Value:
        """Excess air ratio by element balance. [number]"""
    @property
    def excess_air_ratio_short(self) -> Value:
        """Excess air ratio by the short form with the rule's oxygen of air; 1 to 8 % high for hydrocarbons. [number]"""
    @property
    def carbon_dioxide_dry_derived(self) -> Value:
        """Carbon dioxide in dry flue gas derived from oxygen by element balance. [%, dry]"""
    @property
    def carbon_dioxide_dry_short(self) -> Value:
        """Carbon dioxide in dry flue gas derived by the short form. [%, dry]"""
    @property
    def carbon_monoxide_ratio(self) -> Value:
        """Carbon monoxide over carbon dioxide, derived by element balance. [number]"""
    @property
    def carbon_monoxide_ratio_short(self) -> Value:
        """Carbon monoxide over carbon dioxide, derived by the short form. [number]"""
    @property
    def carbon_monoxide_air_free(self) -> Value:
        """Carbon monoxide per dry flue gas of complete combustion without excess air, by element balance. [ppm, air-free]"""
    @property
    def carbon_monoxide_air_free_rule(self) -> Value:
        """Carbon monoxide air-free by the rule's formula. [ppm, air-free]"""
    @property
    def carbon_monoxide_at_reference(self) -> Value:
        """Carbon monoxide at reference oxygen by the rule's formula. [ppm, dry]"""
    @property
    def nitrogen_oxides_at_reference(self) -> Value:
        """Nitrogen oxides at reference oxygen by the rule's formula. [ppm, dry]"""
    @property
    def carbon_monoxide_concentration(self) -> Value:
        """Mass of carbon monoxide per cubic metre of dry flue gas as measured. [mg/m³]"""
    @property
    def carbon_monoxide_concentration_at_reference(self) -> Value:
        """Mass of carbon monoxide per cubic metre of dry flue gas at reference oxygen. [mg/m³]"""
    @property
    def nitrogen_oxides_concentration(self) -> Value:
        """Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas as measured. [mg/m³]"""
    @property
    def nitrogen_oxides_concentration_at_reference(self) -> Value:
        """Mass of nitrogen oxides, counted as NO2, per cubic metre of dry flue gas at reference oxygen. [mg/m³]"""
    @property
    def carbon_monoxide_per_gross_heat(self) -> Value:
        """Carbon monoxide per gross heat input, by element balance. [mg/kWh, gross]"""
    @property
    def carbon_monoxide_per_net_heat(self) -> Value:
        """Carbon monoxide per net heat input, by element balance. [mg/kWh, net]"""
    @property
    def nitrogen_oxides_per_gross_heat(self) -> Value:
        """Nitrogen oxides, counted as NO2, per gross heat input, by element balance. [mg/kWh, gross]"""
    @property
    def nitrogen_oxides_per_net_heat(self) -> Value:
        """Nitrogen oxides, counted as NO2, per net heat input, by element balance. [mg/kWh, net]"""

@type_check_only
class FlueEmissions(Calculation[FlueEmissionsResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fuel: str | Mapping[str, Any],
        oxygen_dry: _Quantity,
        carbon_monoxide_dry: _Quantity,
        reference_oxygen: _Quantity,
        air_oxygen: _Quantity,
        air: Literal["standard", "21/79"] | None = ...,
        nitrogen_oxides_dry: _Quantity | None = ...,
        volume_temperature: _Quantity | None = ...,
        volume_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FlueEmissionsResult:
        """Carbon monoxide and nitrogen oxides air-free, at reference oxygen, per cubic metre and per kilowatt-hour on both bases, by element balance and by the short formulae of rules."""

flue_emissions: FlueEmissions

@type_check_only
class MassConcentrationResult(Record):
    @property
    def mass_concentration(self) -> Value:
        """Mass of the gas per cubic metre. [mg/m³]"""

@type_check_only
class MassConcentration(Calculation[MassConcentrationResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fraction: _Quantity,
        temperature: _Quantity,
        gas: Literal["carbon monoxide", "carbon dioxide", "nitrogen monoxide", "nitrogen dioxide"] | None = ...,
        pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> MassConcentrationResult:
        """Milligrams per cubic metre from parts per million, at a stated temperature and pressure."""

mass_concentration: MassConcentration

@type_check_only
class SiegertConstantsResult(Record):
    @property
    def a2(self) -> Value:
        """Constant A2 of the oxygen form. [number]"""
    @property
    def b(self) -> Value:
        """Constant B. [number]"""
    @property
    def a1(self) -> Value:
        """Constant A1 of the carbon dioxide form. [number]"""
    @property
    def largest_deviation(self) -> Value:
        """Largest difference of the formula from the energy balance over the field. [%, net]"""

@type_check_only
class SiegertConstants(Calculation[SiegertConstantsResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fuel: str | Mapping[str, Any],
        air: Literal["standard", "21/79"] | None = ...,
        least_oxygen: _Quantity | None = ...,
        most_oxygen: _Quantity | None = ...,
        lowest_flue_temperature: _Quantity | None = ...,
        highest_flue_temperature: _Quantity | None = ...,
        air_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> SiegertConstantsResult:
        """Constants of Siegert's formula by least squares against the exact flue loss over a field of oxygen and flue temperature; for fuels that no rule lists, such as hydrogen blends."""

siegert_constants: SiegertConstants

@type_check_only
class SiegertFlueLossResult(Record):
    @property
    def flue_loss_net(self) -> Value:
        """Flue loss from oxygen, share of the net heat input. [%, net]"""
    @property
    def efficiency_net(self) -> Value:
        """Net heat input less that flue loss. [%, net]"""
    @property
    def flue_loss_net_from_carbon_dioxide(self) -> Value:
        """Flue loss from carbon dioxide, share of the net heat input. [%, net]"""

@type_check_only
class SiegertFlueLoss(Calculation[SiegertFlueLossResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        constants: str | Mapping[str, Any] | Sequence[Mapping[str, Any]],
        flue_temperature: _Quantity,
        air_temperature: _Quantity,
        oxygen_dry: _Quantity | None = ...,
        carbon_dioxide_dry: _Quantity | None = ...,
        carbon_dioxide_maximum: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> SiegertFlueLossResult:
        """Flue loss on the net basis by the short formula that German and Belgian rules prescribe, with their constants or the caller's; for the loss itself use flue_analysis."""

siegert_flue_loss: SiegertFlueLoss

@type_check_only
class VolumeFractionResult(Record):
    @property
    def fraction(self) -> Value:
        """Share of volume. [ppm]"""

@type_check_only
class VolumeFraction(Calculation[VolumeFractionResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        mass_concentration: _Quantity,
        temperature: _Quantity,
        gas: Literal["carbon monoxide", "carbon dioxide", "nitrogen monoxide", "nitrogen dioxide"] | None = ...,
        pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> VolumeFractionResult:
        """Parts per million from milligrams per cubic metre, at a stated temperature and pressure."""

volume_fraction: VolumeFraction

@type_check_only
class FuelPropertiesResult(Record):
    @property
    def molar_mass(self) -> Value:
        """Molar mass. [g/mol]"""
    @property
    def compression_factor(self) -> Value:
        """Compression factor at metering conditions. [number]"""
    @property
    def density(self) -> Value:
        """Density at metering conditions. [kg/m³]"""
    @property
    def ideal_density(self) -> Value:
        """Density the gas would have at metering conditions if it were ideal. [kg/m³]"""
    @property
    def relative_density(self) -> Value:
        """Density over that of dry air, both real and at metering conditions. [number]"""
    @property
    def ideal_relative_density(self) -> Value:
        """Molar mass over that of dry air: relative density of ideal gases. [number]"""
    @property
    def gross_calorific_value(self) -> Value:
        """Gross calorific value per volume. [MJ/m³, gross]"""
    @property
    def net_calorific_value(self) -> Value:
        """Net calorific value per volume. [MJ/m³, net]"""
    @property
    def gross_wobbe_index(self) -> Value:
        """Gross Wobbe index. [MJ/m³, gross]"""
    @property
    def net_wobbe_index(self) -> Value:
        """Net Wobbe index. [MJ/m³, net]"""
    @property
    def gross_molar_calorific_value(self) -> Value:
        """Gross calorific value per amount of substance. [kJ/mol, gross]"""
    @property
    def net_molar_calorific_value(self) -> Value:
        """Net calorific value per amount of substance. [kJ/mol, net]"""
    @property
    def gross_mass_calorific_value(self) -> Value:
        """Gross calorific value per mass. [MJ/kg, gross]"""
    @property
    def net_mass_calorific_value(self) -> Value:
        """Net calorific value per mass. [MJ/kg, net]"""
    @property
    def gross_over_net(self) -> Value:
        """Gross calorific value over net. [number]"""

@type_check_only
class FuelProperties(Calculation[FuelPropertiesResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fuel: str | Mapping[str, Any] | None = ...,
        edition: Literal["2016", "1995"] | None = ...,
        combustion_temperature: _Quantity | None = ...,
        metering_temperature: _Quantity | None = ...,
        metering_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FuelPropertiesResult:
        """What gas_properties gives, for a test gas by its letters, a composition by names, a hydrogen blend or LPG mix, at reference conditions that may vary; for a liquid or solid fuel its calorific values per mass at 25 °C."""

fuel_properties: FuelProperties

@type_check_only
class GasPropertiesResult(Record):
    @property
    def molar_mass(self) -> Value:
        """Molar mass. [g/mol]"""
    @property
    def compression_factor(self) -> Value:
        """Compression factor at metering conditions. [number]"""
    @property
    def density(self) -> Value:
        """Density at metering conditions. [kg/m³]"""
    @property
    def ideal_density(self) -> Value:
        """Density the gas would have at metering conditions if it were ideal. [kg/m³]"""
    @property
    def relative_density(self) -> Value:
        """Density over that of dry air, both real and at metering conditions. [number]"""
    @property
    def ideal_relative_density(self) -> Value:
        """Molar mass over that of dry air: relative density of ideal gases. [number]"""
    @property
    def gross_calorific_value(self) -> Value:
        """Gross calorific value per volume. [MJ/m³, gross]"""
    @property
    def net_calorific_value(self) -> Value:
        """Net calorific value per volume. [MJ/m³, net]"""
    @property
    def gross_wobbe_index(self) -> Value:
        """Gross Wobbe index. [MJ/m³, gross]"""
    @property
    def net_wobbe_index(self) -> Value:
        """Net Wobbe index. [MJ/m³, net]"""
    @property
    def gross_molar_calorific_value(self) -> Value:
        """Gross calorific value per amount of substance. [kJ/mol, gross]"""
    @property
    def net_molar_calorific_value(self) -> Value:
        """Net calorific value per amount of substance. [kJ/mol, net]"""
    @property
    def gross_mass_calorific_value(self) -> Value:
        """Gross calorific value per mass. [MJ/kg, gross]"""
    @property
    def net_mass_calorific_value(self) -> Value:
        """Net calorific value per mass. [MJ/kg, net]"""
    @property
    def gross_over_net(self) -> Value:
        """Gross calorific value over net. [number]"""

@type_check_only
class GasProperties(Calculation[GasPropertiesResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        edition: Literal["2016", "1995"] | None = ...,
        reference: str | None = ...,
        normalise: bool | str | None = ...,
        methane: _Quantity | None = ...,
        ethane: _Quantity | None = ...,
        propane: _Quantity | None = ...,
        n_butane: _Quantity | None = ...,
        isobutane: _Quantity | None = ...,
        n_pentane: _Quantity | None = ...,
        isopentane: _Quantity | None = ...,
        neopentane: _Quantity | None = ...,
        n_hexane: _Quantity | None = ...,
        n_heptane: _Quantity | None = ...,
        n_octane: _Quantity | None = ...,
        n_nonane: _Quantity | None = ...,
        n_decane: _Quantity | None = ...,
        ethene: _Quantity | None = ...,
        propene: _Quantity | None = ...,
        hydrogen: _Quantity | None = ...,
        carbon_monoxide: _Quantity | None = ...,
        nitrogen: _Quantity | None = ...,
        carbon_dioxide: _Quantity | None = ...,
        oxygen: _Quantity | None = ...,
        helium: _Quantity | None = ...,
        argon: _Quantity | None = ...,
        water: _Quantity | None = ...,
        hydrogen_sulphide: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> GasPropertiesResult:
        """Molar mass, compression factor, density, calorific values and Wobbe indices of a gas mixture at any reference conditions, from the mole fraction of each component."""

gas_properties: GasProperties

@type_check_only
class AtmosphericPressureResult(Record):
    @property
    def standard_pressure(self) -> Value:
        """Pressure of the standard atmosphere. [mbar, absolute]"""
    @property
    def uk_deduction(self) -> Value:
        """What UK billing law of 1996 deducts from 1013.25 mbar, in proportion to the altitude. [mbar]"""
    @property
    def uk_band_deduction(self) -> Value:
        """The deduction of the band of 2.5 m in which the altitude lies. [mbar]"""
    @property
    def uk_pressure(self) -> Value:
        """1013.25 mbar less the deduction in proportion. [mbar, absolute]"""

@type_check_only
class AtmosphericPressure(Calculation[AtmosphericPressureResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        altitude: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> AtmosphericPressureResult:
        """The pressure of the standard atmosphere at an altitude, and what UK billing law deducts for it."""

atmospheric_pressure: AtmosphericPressure

@type_check_only
class GasRateResult(Record):
    @property
    def volume(self) -> Value:
        """Volume that passed, with the meter's error taken out. [m³, at the meter]"""
    @property
    def gas_rate(self) -> Value:
        """Volume flow as it passes the meter. [m³/h, at the meter]"""
    @property
    def atmospheric_pressure(self) -> Value:
        """Atmospheric pressure taken. [mbar, absolute]"""
    @property
    def conversion_factor(self) -> Value:
        """Reference volume over volume in the meter (state number). [number]"""
    @property
    def reference_gas_rate(self) -> Value:
        """Volume flow at reference conditions. [m³/h, at reference conditions]"""
    @property
    def heat_input_gross(self) -> Value:
        """Heat input on the gross basis, converted to reference conditions. [kW, gross]"""
    @property
    def heat_input_net(self) -> Value:
        """Heat input on the net basis, converted to reference conditions. [kW, net]"""
    @property
    def uncorrected_heat_input_gross(self) -> Value:
        """Gross heat input as if the gas in the meter were at reference conditions. [kW, gross]"""
    @property
    def uncorrected_heat_input_net(self) -> Value:
        """Net heat input as if the gas in the meter were at reference conditions. [kW, net]"""
    @property
    def uncorrected_error(self) -> Value:
        """What the uncorrected heat input is off the converted one. [%]"""
    @property
    def gross_over_net(self) -> Value:
        """Gross calorific value over net. [number]"""
    @property
    def share_of_plate_gross(self) -> Value:
        """Gross heat input over that of the plate; uncorrected where the gas conditions are not known. [%, gross]"""
    @property
    def share_of_plate_net(self) -> Value:
        """Net heat input over that of the plate; uncorrected where the gas conditions are not known. [%, net]"""

@type_check_only
class GasRate(Calculation[GasRateResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        time: _Quantity,
        reference: str | None = ...,
        index_unit: Literal["m3", "L", "ft3", "10 ft3", "100 ft3", "1000 ft3"] | None = ...,
        altitude_rule: Literal["standard_atmosphere", "uk_1996"] | None = ...,
        medium_pressure: bool | str | None = ...,
        fuel: str | Mapping[str, Any] | None = ...,
        volume: _Quantity | None = ...,
        dial_volume: _Quantity | None = ...,
        revolutions: _Number | None = ...,
        index_start: _Number | None = ...,
        index_end: _Number | None = ...,
        meter_error: _Quantity | None = ...,
        gas_pressure: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        altitude: _Quantity | None = ...,
        compression_ratio: _Number | None = ...,
        gross_calorific_value: _Quantity | None = ...,
        net_calorific_value: _Quantity | None = ...,
        plate_heat_input_gross: _Quantity | None = ...,
        plate_heat_input_net: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> GasRateResult:
        """Gas rate from a timed volume, test dial or index, converted to reference conditions, with the heat input gross and net and its share of the appliance plate on the same basis."""

gas_rate: GasRate

@type_check_only
class GasRateUncertaintyResult(Record):
    @property
    def heat_input_gross(self) -> Value:
        """Heat input on the gross basis, uncorrected where the gas conditions were not measured. [kW, gross]"""
    @property
    def standard_uncertainty(self) -> Value:
        """Its standard uncertainty. [kW]"""
    @property
    def expanded_uncertainty(self) -> Value:
        """Its expanded uncertainty, k = 2. [kW]"""
    @property
    def relative_uncertainty(self) -> Value:
        """Standard uncertainty as a share of the heat input. [%]"""
    @property
    def uncorrected_relative_uncertainty(self) -> Value:
        """The same without pressure and temperature of the gas: that of an uncorrected rate, which has an error besides. [%]"""
    @property
    def share_of_resolution(self) -> Value:
        """Share of the meter's resolution in the squared uncertainty. [%]"""
    @property
    def share_of_timing(self) -> Value:
        """Share of the stopwatch. [%]"""
    @property
    def share_of_meter(self) -> Value:
        """Share of the meter's permissible error. [%]"""
    @property
    def share_of_calorific_value(self) -> Value:
        """Share of the calorific value. [%]"""
    @property
    def share_of_pressure(self) -> Value:
        """Share of gas and atmospheric pressure. [%]"""
    @property
    def share_of_temperature(self) -> Value:
        """Share of the gas temperature. [%]"""

@type_check_only
class GasRateUncertainty(Calculation[GasRateUncertaintyResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        volume: _Quantity,
        meter_resolution: _Quantity,
        time: _Quantity,
        maximum_permissible_error: _Quantity,
        gross_calorific_value: _Quantity,
        reference: str | None = ...,
        reaction_time_uncertainty: _Quantity | None = ...,
        calorific_value_uncertainty: _Quantity | None = ...,
        gas_pressure: _Quantity | None = ...,
        gas_pressure_uncertainty: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        barometric_pressure_uncertainty: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        gas_temperature_uncertainty: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> GasRateUncertaintyResult:
        """The uncertainty budget of a timed gas rate: resolution of the meter, reaction time, permissible error, calorific value, pressure and temperature, to first order and independent of each other."""

gas_rate_uncertainty: GasRateUncertainty

@type_check_only
class GasRateTestTimeResult(Record):
    @property
    def gas_rate(self) -> Value:
        """Gas rate taken. [m³/h, at the meter]"""
    @property
    def time_for_volume(self) -> Value:
        """Time in which the volume passes. [s]"""
    @property
    def time_for_uncertainty(self) -> Value:
        """Time from which reading and timing are as certain as wanted. [s]"""
    @property
    def volume_for_uncertainty(self) -> Value:
        """Volume that passes in that time. [m³, at the meter]"""

@type_check_only
class GasRateTestTime(Calculation[GasRateTestTimeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        gas_rate: _Quantity | None = ...,
        heat_input_gross: _Quantity | None = ...,
        gross_calorific_value: _Quantity | None = ...,
        conversion_factor: _Number | None = ...,
        volume: _Quantity | None = ...,
        meter_resolution: _Quantity | None = ...,
        reaction_time_uncertainty: _Quantity | None = ...,
        wanted_uncertainty: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> GasRateTestTimeResult:
        """The time a volume takes to pass at an expected rate, and the test time from which the meter's resolution and the stopwatch leave a wanted uncertainty."""

gas_rate_test_time: GasRateTestTime

@type_check_only
class GasEnergyResult(Record):
    @property
    def reference_volume(self) -> Value:
        """Volume at reference conditions. [m³, at reference conditions]"""
    @property
    def energy_gross(self) -> Value:
        """Energy on the gross basis. [kWh]"""

@type_check_only
class GasEnergy(Calculation[GasEnergyResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        volume: _Quantity,
        conversion_factor: _Number,
        gross_calorific_value: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> GasEnergyResult:
        """Gross energy of the gas that a meter counted, from the volume conversion factor and the calorific value that the bill states."""

gas_energy: GasEnergy

@type_check_only
class MeteringReferenceChangeResult(Record):
    @property
    def volume_ratio(self) -> Value:
        """Volume of the same gas at the stated over that at the wanted conditions. [number]"""
    @property
    def gross_calorific_value(self) -> Value:
        """Gross calorific value. [MJ/m³, gross]"""
    @property
    def net_calorific_value(self) -> Value:
        """Net calorific value. [MJ/m³, net]"""

@type_check_only
class MeteringReferenceChange(Calculation[MeteringReferenceChangeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        stated_temperature: _Quantity,
        wanted_temperature: _Quantity,
        gross_calorific_value: _Quantity | None = ...,
        net_calorific_value: _Quantity | None = ...,
        stated_pressure: _Quantity | None = ...,
        wanted_pressure: _Quantity | None = ...,
        compression_ratio: _Number | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> MeteringReferenceChangeResult:
        """A calorific value per volume carried from one metering temperature and pressure to another. The combustion reference stays; where the composition is known, gas_properties gives both parts exactly."""

metering_reference_change: MeteringReferenceChange

@type_check_only
class WobbeIndexResult(Record):
    @property
    def gross_wobbe_index(self) -> Value:
        """Gross Wobbe index. [MJ/m³, gross]"""
    @property
    def net_wobbe_index(self) -> Value:
        """Net Wobbe index. [MJ/m³, net]"""
    @property
    def gross_over_net(self) -> Value:
        """Gross calorific value over net. [number]"""

@type_check_only
class WobbeIndex(Calculation[WobbeIndexResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        relative_density: _Number,
        gross_calorific_value: _Quantity | None = ...,
        net_calorific_value: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> WobbeIndexResult:
        """Gross and net Wobbe index of a gas whose calorific value and relative density are stated, as on a supplier's sheet."""

wobbe_index: WobbeIndex

@type_check_only
class LiquidWaterResult(Record):
    @property
    def density(self) -> Value:
        """Density. [kg/m³]"""
    @property
    def specific_heat_capacity(self) -> Value:
        """Specific heat capacity at constant pressure. [J/(kg·K)]"""
    @property
    def specific_enthalpy(self) -> Value:
        """Specific enthalpy, zero near 0 °C. [kJ/kg]"""
    @property
    def dynamic_viscosity(self) -> Value:
        """Dynamic viscosity. [Pa·s]"""
    @property
    def thermal_conductivity(self) -> Value:
        """Thermal conductivity. [W/(m·K)]"""
    @property
    def expansion_coefficient(self) -> Value:
        """Volumetric expansion coefficient at constant pressure; negative below about 4 °C. [1/K]"""
    @property
    def prandtl_number(self) -> Value:
        """Prandtl number. [number]"""
    @property
    def saturation_pressure(self) -> Value:
        """Pressure at which water of this temperature boils. [bar, absolute]"""

@type_check_only
class LiquidWater(Calculation[LiquidWaterResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        temperature: _Quantity,
        pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> LiquidWaterResult:
        """Density, heat capacity, enthalpy, viscosity, conductivity and expansion of liquid water at a temperature and pressure."""

liquid_water: LiquidWater

@type_check_only
class DryAirResult(Record):
    @property
    def density(self) -> Value:
        """Density. [kg/m³]"""
    @property
    def specific_heat_capacity(self) -> Value:
        """Specific heat capacity at constant pressure. [J/(kg·K)]"""
    @property
    def dynamic_viscosity(self) -> Value:
        """Dynamic viscosity. [Pa·s]"""
    @property
    def kinematic_viscosity(self) -> Value:
        """Kinematic viscosity. [m²/s]"""
    @property
    def thermal_conductivity(self) -> Value:
        """Thermal conductivity. [W/(m·K)]"""
    @property
    def prandtl_number(self) -> Value:
        """Prandtl number. [number]"""

@type_check_only
class DryAir(Calculation[DryAirResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        temperature: _Quantity,
        pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> DryAirResult:
        """Density, heat capacity, viscosity, conductivity and Prandtl number of dry air."""

dry_air: DryAir

@type_check_only
class HumidAirResult(Record):
    @property
    def density(self) -> Value:
        """Density. [kg/m³]"""
    @property
    def humidity_ratio(self) -> Value:
        """Mass of vapour per mass of dry air. [kg/kg]"""
    @property
    def vapour_mole_fraction(self) -> Value:
        """Mole fraction of vapour in the humid air. [%]"""
    @property
    def vapour_pressure(self) -> Value:
        """Pressure of the vapour: mole fraction times pressure. [mbar, absolute]"""
    @property
    def dew_point(self) -> Value:
        """Temperature at which dew or, below 0 °C, frost begins to form. [°C]"""

@type_check_only
class HumidAir(Calculation[HumidAirResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        temperature: _Quantity,
        relative_humidity: _Quantity,
        pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> HumidAirResult:
        """Density, humidity ratio, vapour pressure and dew point of the air in a room or outdoors."""

humid_air: HumidAir

@type_check_only
class FrictionFactorResult(Record):
    @property
    def friction_factor(self) -> Value:
        """Darcy friction factor; in the transition a straight line between its ends, for want of better. [number]"""
    @property
    def least_friction_factor(self) -> Value:
        """Least factor that may be: below `friction_factor` in the transition only. [number]"""
    @property
    def greatest_friction_factor(self) -> Value:
        """Greatest factor that may be: above `friction_factor` in the transition only. [number]"""
    @property
    def laminar_friction_factor(self) -> Value:
        """Factor if the flow were laminar, 64/Re. [number]"""
    @property
    def turbulent_friction_factor(self) -> Value:
        """Factor if the flow were turbulent, by the named equation. [number]"""

@type_check_only
class FrictionFactor(Calculation[FrictionFactorResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        reynolds_number: _Number,
        equation: Literal["Colebrook", "Haaland", "Swamee-Jain"] | None = ...,
        relative_roughness: _Number | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FrictionFactorResult:
        """Darcy's friction factor from Reynolds number and relative roughness: laminar below 2300, turbulent from 4000, and a band between."""

friction_factor: FrictionFactor

@type_check_only
class PipeHeatLossResult(Record):
    @property
    def heat_loss_per_length(self) -> Value:
        """Heat lost per metre of run. [W/m]"""
    @property
    def heat_loss(self) -> Value:
        """Heat lost by the whole run. [W]"""
    @property
    def surface_temperature(self) -> Value:
        """Temperature of the outermost surface. [°C]"""
    @property
    def convection_per_length(self) -> Value:
        """Part of the loss that leaves by convection, per metre. [W/m]"""
    @property
    def radiation_per_length(self) -> Value:
        """Part of the loss that leaves by radiation, per metre. [W/m]"""
    @property
    def inside_resistance(self) -> Value:
        """Resistance of the film inside; 0 where it is left out. [m·K/W]"""
    @property
    def wall_resistance(self) -> Value:
        """Resistance of the pipe's wall. [m·K/W]"""
    @property
    def insulation_resistance(self) -> Value:
        """Resistance of all insulation. [m·K/W]"""
    @property
    def outside_resistance(self) -> Value:
        """Resistance from the outermost surface to the air, radiation included. [m·K/W]"""
    @property
    def insulation_conductivity_used(self) -> Value:
        """Thermal conductivity of the insulation as used. [W/(m·K)]"""
    @property
    def surface_diameter(self) -> Value:
        """Outermost diameter. [mm]"""
    @property
    def convection_coefficient(self) -> Value:
        """Coefficient of convection outside. [W/(m²·K)]"""
    @property
    def radiation_coefficient(self) -> Value:
        """Coefficient of radiation outside. [W/(m²·K)]"""
    @property
    def nusselt_number(self) -> Value:
        """Nusselt number outside: on the diameter; on the length for a vertical run. [number]"""
    @property
    def rayleigh_number(self) -> Value:
        """Rayleigh number outside, on the same length; Reynolds times Prandtl number in the wind. [number]"""
    @property
    def mass_flow(self) -> Value:
        """Mass flow of the water. [kg/s]"""
    @property
    def reynolds_number(self) -> Value:
        """Reynolds number of the water. [number]"""
    @property
    def inside_coefficient(self) -> Value:
        """Coefficient of the film inside, on the bore. [W/(m²·K)]"""
    @property
    def convection_scatter(self) -> Value:
        """Expected relative accuracy of the coefficient of convection outside. [%]"""

@type_check_only
class PipeHeatLoss(Calculation[PipeHeatLossResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        water_temperature: _Quantity,
        air_temperature: _Quantity,
        position: Literal["horizontal", "vertical", "wind"] | None = ...,
        correlation: Literal["usual", "Churchill-Chu", "Morgan", "ISO 12241", "Popiel", "Popiel laminar", "Le Fevre-Ede", "Churchill-Bernstein"] | None = ...,
        tube: str | None = ...,
        insulation: str | None = ...,
        finish: str | None = ...,
        further_layers: Sequence[Mapping[str, Any]] | None = ...,
        length: _Quantity | None = ...,
        water_flow: _Quantity | None = ...,
        outside_diameter: _Quantity | None = ...,
        wall_thickness: _Quantity | None = ...,
        wall_conductivity: _Quantity | None = ...,
        insulation_thickness: _Quantity | None = ...,
        insulation_conductivity: _Quantity | None = ...,
        emissivity: _Number | None = ...,
        radiant_temperature: _Quantity | None = ...,
        wind_speed: _Quantity | None = ...,
        air_pressure: _Quantity | None = ...,
        water_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> PipeHeatLossResult:
        """Heat that a bare or insulated run loses per metre and in all, its surface temperature, and the resistances on the way: film inside, wall, insulation, and convection and radiation outside, with the surface temperature solved. For the insulation that a wanted loss takes, seek `insulation_thickness` for it."""

pipe_heat_loss: PipeHeatLoss

@type_check_only
class PipeTemperatureDropResult(Record):
    @property
    def outlet_temperature(self) -> Value:
        """Temperature of the water where it leaves. [°C]"""
    @property
    def temperature_drop(self) -> Value:
        """By how much the water cooled; negative where the run takes up heat. [K]"""
    @property
    def heat_loss(self) -> Value:
        """Heat lost by the whole run. [W]"""
    @property
    def mass_flow(self) -> Value:
        """Mass flow. [kg/s]"""
    @property
    def heat_loss_at_inlet(self) -> Value:
        """Heat lost per metre where the water enters. [W/m]"""
    @property
    def heat_loss_at_outlet(self) -> Value:
        """Heat lost per metre where it leaves. [W/m]"""
    @property
    def reynolds_number_at_inlet(self) -> Value:
        """Reynolds number where the water enters. [number]"""
    @property
    def reynolds_number_at_outlet(self) -> Value:
        """Reynolds number where it leaves. [number]"""
    @property
    def outlet_temperature_by_exponential(self) -> Value:
        """Outlet temperature if the loss per kelvin stayed what it is at the inlet: the usual exponential, for comparison. [°C]"""

@type_check_only
class PipeTemperatureDrop(Calculation[PipeTemperatureDropResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        inlet_temperature: _Quantity,
        water_flow: _Quantity,
        length: _Quantity,
        air_temperature: _Quantity,
        position: Literal["horizontal", "vertical", "wind"] | None = ...,
        correlation: Literal["usual", "Churchill-Chu", "Morgan", "ISO 12241", "Popiel", "Popiel laminar", "Le Fevre-Ede", "Churchill-Bernstein"] | None = ...,
        tube: str | None = ...,
        insulation: str | None = ...,
        finish: str | None = ...,
        further_layers: Sequence[Mapping[str, Any]] | None = ...,
        outside_diameter: _Quantity | None = ...,
        wall_thickness: _Quantity | None = ...,
        wall_conductivity: _Quantity | None = ...,
        insulation_thickness: _Quantity | None = ...,
        insulation_conductivity: _Quantity | None = ...,
        emissivity: _Number | None = ...,
        radiant_temperature: _Quantity | None = ...,
        wind_speed: _Quantity | None = ...,
        air_pressure: _Quantity | None = ...,
        water_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> PipeTemperatureDropResult:
        """Temperature of the water where it leaves a run at a given flow, and the heat the run loses, with the loss following the water's temperature along the way."""

pipe_temperature_drop: PipeTemperatureDrop

@type_check_only
class PipeCoolDownResult(Record):
    @property
    def time_to_target(self) -> Value:
        """Time until the target temperature. [min]"""
    @property
    def temperature_after(self) -> Value:
        """Temperature after the time asked. [°C]"""
    @property
    def water_capacity(self) -> Value:
        """Heat capacity of the water per metre. [J/(m·K)]"""
    @property
    def wall_capacity(self) -> Value:
        """Heat capacity of the pipe's wall per metre. [J/(m·K)]"""
    @property
    def heat_loss_at_start(self) -> Value:
        """Heat lost per metre at the start. [W/m]"""
    @property
    def time_constant(self) -> Value:
        """Time in which the excess over the room would fall to 1/e if the loss per kelvin stayed what it is at the start. [min]"""
    @property
    def time_to_target_by_exponential(self) -> Value:
        """Time until the target by that constant: the usual exponential, for comparison. [min]"""
    @property
    def heat_held(self) -> Value:
        """Heat that water and pipe of the whole run hold above the temperature at which they come to rest. [kJ]"""

@type_check_only
class PipeCoolDown(Calculation[PipeCoolDownResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        start_temperature: _Quantity,
        target_temperature: _Quantity,
        air_temperature: _Quantity,
        position: Literal["horizontal", "vertical", "wind"] | None = ...,
        correlation: Literal["usual", "Churchill-Chu", "Morgan", "ISO 12241", "Popiel", "Popiel laminar", "Le Fevre-Ede", "Churchill-Bernstein"] | None = ...,
        tube: str | None = ...,
        insulation: str | None = ...,
        finish: str | None = ...,
        further_layers: Sequence[Mapping[str, Any]] | None = ...,
        elapsed_time: _Quantity | None = ...,
        length: _Quantity | None = ...,
        wall_density: _Quantity | None = ...,
        wall_heat_capacity: _Quantity | None = ...,
        outside_diameter: _Quantity | None = ...,
        wall_thickness: _Quantity | None = ...,
        wall_conductivity: _Quantity | None = ...,
        insulation_thickness: _Quantity | None = ...,
        insulation_conductivity: _Quantity | None = ...,
        emissivity: _Number | None = ...,
        radiant_temperature: _Quantity | None = ...,
        wind_speed: _Quantity | None = ...,
        air_pressure: _Quantity | None = ...,
        water_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> PipeCoolDownResult:
        """Time in which the standing water of a run cools to a temperature, its temperature after a time, and the heat the run holds. The loss follows the temperature; water and wall are taken as one mass."""

pipe_cool_down: PipeCoolDown

@type_check_only
class CriticalRadiusResult(Record):
    @property
    def critical_radius(self) -> Value:
        """Outer radius of the insulation at which the loss is greatest. [mm]"""
    @property
    def loss_per_kelvin(self) -> Value:
        """Loss per metre of run and kelvin between pipe and air, with this insulation. [W/(m·K)]"""
    @property
    def bare_loss_per_kelvin(self) -> Value:
        """The same of the bare pipe. [W/(m·K)]"""
    @property
    def loss_ratio(self) -> Value:
        """This loss over the bare pipe's. [number]"""
    @property
    def greatest_loss_per_kelvin(self) -> Value:
        """The greatest loss per kelvin that any thickness of this insulation gives. [W/(m·K)]"""

@type_check_only
class CriticalRadius(Calculation[CriticalRadiusResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        outside_diameter: _Quantity,
        insulation_conductivity: _Quantity,
        insulation_thickness: _Quantity | None = ...,
        outside_coefficient: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> CriticalRadiusResult:
        """The outer radius up to which insulation around a thin pipe raises the loss instead of lowering it, and the loss per kelvin at a thickness, with a fixed coefficient outside."""

critical_radius: CriticalRadius

@type_check_only
class AntifreezeMixtureResult(Record):
    @property
    def density(self) -> Value:
        """Density. [kg/m³]"""
    @property
    def specific_heat_capacity(self) -> Value:
        """Specific heat capacity. [J/(kg·K)]"""
    @property
    def dynamic_viscosity(self) -> Value:
        """Dynamic viscosity. [Pa·s]"""
    @property
    def thermal_conductivity(self) -> Value:
        """Thermal conductivity. [W/(m·K)]"""
    @property
    def expansion_coefficient(self) -> Value:
        """Volumetric expansion coefficient. [1/K]"""
    @property
    def prandtl_number(self) -> Value:
        """Prandtl number. [number]"""
    @property
    def freezing_temperature(self) -> Value:
        """Temperature at which ice begins to form. [°C]"""
    @property
    def glycol_volume_fraction(self) -> Value:
        """Share of glycol by volume, as poured together at 20 °C. [%]"""

@type_check_only
class AntifreezeMixture(Calculation[AntifreezeMixtureResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        glycol_mass_fraction: _Quantity,
        temperature: _Quantity,
        antifreeze: Literal["propylene glycol", "ethylene glycol"] | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> AntifreezeMixtureResult:
        """Density, heat capacity, viscosity, conductivity, expansion and freezing point of water with propylene or ethylene glycol."""

antifreeze_mixture: AntifreezeMixture

@type_check_only
class BoilingPointResult(Record):
    @property
    def absolute_pressure(self) -> Value:
        """Absolute pressure. [bar, absolute]"""
    @property
    def boiling_point(self) -> Value:
        """Boiling point. [°C]"""
    @property
    def margin(self) -> Value:
        """Margin from the water's temperature up to boiling; negative where it boils. [K]"""

@type_check_only
class BoilingPoint(Calculation[BoilingPointResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        water_pressure: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        water_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> BoilingPointResult:
        """The temperature at which water boils at a gauge pressure and barometer, and how far from it the water is."""

boiling_point: BoilingPoint

@type_check_only
class CoolDownResult(Record):
    @property
    def time(self) -> Value:
        """Time until the target is reached. [min]"""
    @property
    def return_temperature(self) -> Value:
        """Temperature of the water coming back to the block at that moment. [°C]"""
    @property
    def heat_released(self) -> Value:
        """Heat that block, pipes and emitters have released by then. [kJ]"""
    @property
    def casing_heat(self) -> Value:
        """Heat given off by the casing. [kJ]"""
    @property
    def pipe_heat(self) -> Value:
        """Heat given off by the pipes of all circuits. [kJ]"""
    @property
    def emitter_heat(self) -> Value:
        """Heat given off by the emitters of all circuits. [kJ]"""
    @property
    def heat_left(self) -> Value:
        """Heat that block, pipes and emitters still hold over the room. [kJ]"""
    @property
    def steady_temperature(self) -> Value:
        """Temperature at the point watched after an endless time. [°C]"""
    @property
    def imbalance(self) -> Value:
        """Share by which heat put in, stored and given off fail to balance. [number]"""
    @property
    def time_after(self) -> Value:
        """Time until the target is reached with the circuits in their second state. [min]"""
    @property
    def emitter_heat_after(self) -> Value:
        """Heat given off by the emitters by then. [kJ]"""
    @property
    def steady_temperature_after(self) -> Value:
        """Temperature after an endless time in that state. [°C]"""

@type_check_only
class CoolDown(Calculation[CoolDownResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        metal_mass: _Quantity,
        water_content: _Quantity,
        casing_loss: _Quantity,
        pump_flow: _Quantity,
        flow_length: _Quantity,
        return_length: _Quantity,
        block_temperature: _Quantity,
        target_temperature: _Quantity,
        flow_cells: _Number | None = ...,
        return_cells: _Number | None = ...,
        circuits: Sequence[Mapping[str, Any]] | None = ...,
        position: Literal["horizontal", "vertical", "wind"] | None = ...,
        correlation: Literal["usual", "Churchill-Chu", "Morgan", "ISO 12241", "Popiel", "Popiel laminar", "Le Fevre-Ede", "Churchill-Bernstein"] | None = ...,
        tube: str | None = ...,
        insulation: str | None = ...,
        finish: str | None = ...,
        further_layers: Sequence[Mapping[str, Any]] | None = ...,
        pump: Literal["running", "stopped"] | None = ...,
        watched: Literal["block", "metal", "flow_end", "emitter", "return_end", "room"] | None = ...,
        thresholds: Sequence[Mapping[str, Any]] | None = ...,
        metal_specific_heat_capacity: _Quantity | None = ...,
        water_density: _Quantity | None = ...,
        water_specific_heat_capacity: _Quantity | None = ...,
        film_conductance: _Quantity | None = ...,
        standing_heat: _Quantity | None = ...,
        pump_shut_off_pressure: _Quantity | None = ...,
        pressure_drop: _Quantity | None = ...,
        pipe_heat_capacity: _Quantity | None = ...,
        pipe_loss: _Quantity | None = ...,
        insulation_thickness: _Quantity | None = ...,
        insulation_conductivity: _Quantity | None = ...,
        emitter_output: _Quantity | None = ...,
        emitter_exponent: _Number | None = ...,
        emitter_heat_capacity: _Quantity | None = ...,
        emitter_height: _Quantity | None = ...,
        room_temperature: _Quantity | None = ...,
        room_heat_capacity: _Quantity | None = ...,
        room_loss: _Quantity | None = ...,
        outdoor_temperature: _Quantity | None = ...,
        metal_temperature: _Quantity | None = ...,
        circuit_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> CoolDownResult:
        """How long until the hot block has fallen to a temperature with the pump running or stopped, where its heat goes, and what opening or closing another circuit does to that."""

cool_down: CoolDown

@type_check_only
class PumpOverrunResult(Record):
    @property
    def stop_time(self) -> Value:
        """Time until the pump stops for the first time. [min]"""
    @property
    def block_temperature_at_stop(self) -> Value:
        """Temperature of the water in the block at that moment. [°C]"""
    @property
    def return_temperature_at_stop(self) -> Value:
        """Temperature of the returning water just before. [°C]"""
    @property
    def heat_rejected(self) -> Value:
        """Heat the overrun has carried out of block, pipes and emitters. [kJ]"""
    @property
    def heat_left(self) -> Value:
        """Heat that block, pipes and emitters still hold over the room. [kJ]"""
    @property
    def peak_after_stop(self) -> Value:
        """Highest temperature of the block's water after the pump has stopped for the first time, with the pump then left off. [°C]"""
    @property
    def restart_count(self) -> Value:
        """How often the residual heat starts the pump again. [number]"""
    @property
    def final_stop_time(self) -> Value:
        """Time until the pump has stopped for good. [min]"""
    @property
    def steady_temperature(self) -> Value:
        """Temperature of the thermostat's place after an endless time with the pump running. [°C]"""
    @property
    def imbalance(self) -> Value:
        """Share by which heat put in, stored and given off fail to balance at the stop. [number]"""
    @property
    def stop_time_after(self) -> Value:
        """Time until the pump stops for the first time with the circuits in their second state. [min]"""
    @property
    def steady_temperature_after(self) -> Value:
        """Temperature of the thermostat's place after an endless time with the pump running, in that state. [°C]"""
    @property
    def deviation(self) -> Value:
        """Observed less computed time, over the standard uncertainty of that difference: within -2 to 2 they agree. [number]"""

@type_check_only
class PumpOverrun(Calculation[PumpOverrunResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        metal_mass: _Quantity,
        water_content: _Quantity,
        casing_loss: _Quantity,
        pump_flow: _Quantity,
        flow_length: _Quantity,
        return_length: _Quantity,
        block_temperature: _Quantity,
        overrun_temperature: _Quantity,
        flow_cells: _Number | None = ...,
        return_cells: _Number | None = ...,
        circuits: Sequence[Mapping[str, Any]] | None = ...,
        position: Literal["horizontal", "vertical", "wind"] | None = ...,
        correlation: Literal["usual", "Churchill-Chu", "Morgan", "ISO 12241", "Popiel", "Popiel laminar", "Le Fevre-Ede", "Churchill-Bernstein"] | None = ...,
        tube: str | None = ...,
        insulation: str | None = ...,
        finish: str | None = ...,
        further_layers: Sequence[Mapping[str, Any]] | None = ...,
        metal_specific_heat_capacity: _Quantity | None = ...,
        water_density: _Quantity | None = ...,
        water_specific_heat_capacity: _Quantity | None = ...,
        film_conductance: _Quantity | None = ...,
        standing_heat: _Quantity | None = ...,
        pump_shut_off_pressure: _Quantity | None = ...,
        pressure_drop: _Quantity | None = ...,
        pipe_heat_capacity: _Quantity | None = ...,
        pipe_loss: _Quantity | None = ...,
        insulation_thickness: _Quantity | None = ...,
        insulation_conductivity: _Quantity | None = ...,
        emitter_output: _Quantity | None = ...,
        emitter_exponent: _Number | None = ...,
        emitter_heat_capacity: _Quantity | None = ...,
        emitter_height: _Quantity | None = ...,
        room_temperature: _Quantity | None = ...,
        room_heat_capacity: _Quantity | None = ...,
        room_loss: _Quantity | None = ...,
        outdoor_temperature: _Quantity | None = ...,
        metal_temperature: _Quantity | None = ...,
        circuit_temperature: _Quantity | None = ...,
        overrun_differential: _Quantity | None = ...,
        sensor_time_constant: _Quantity | None = ...,
        observed_stop_time: _Quantity | None = ...,
        observation_uncertainty: _Quantity | None = ...,
        model_uncertainty: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> PumpOverrunResult:
        """When the overrun thermostat stops the pump after the burner has stopped, or that it never does and at what temperature the plant comes to rest; whether residual heat starts it again; what another state of the circuits does to that."""

pump_overrun: PumpOverrun

@type_check_only
class OvershootResult(Record):
    @property
    def firing_time(self) -> Value:
        """Time until the thermostat stops the burner. [s]"""
    @property
    def temperature_at_cut_out(self) -> Value:
        """Temperature of the block's water as the burner stops. [°C]"""
    @property
    def residual_heat(self) -> Value:
        """Heat the metal then holds over the water. [kJ]"""
    @property
    def peak_with_pump_stopped(self) -> Value:
        """Highest temperature of the block's water if the pump stops with the burner. [°C]"""
    @property
    def peak_time_with_pump_stopped(self) -> Value:
        """Time of that peak after the burner has stopped. [s]"""
    @property
    def peak_with_pump_running(self) -> Value:
        """Highest temperature of the block's water if the pump runs on. [°C]"""
    @property
    def overshoot_with_pump_stopped(self) -> Value:
        """Overshoot over the cut-out with the pump stopped. [K]"""
    @property
    def overshoot_with_pump_running(self) -> Value:
        """Overshoot over the cut-out with the pump running on. [K]"""
    @property
    def margin_with_pump_stopped(self) -> Value:
        """Limit less the peak with the pump stopped; negative where the limit would lock out. [K]"""
    @property
    def margin_with_pump_running(self) -> Value:
        """Limit less the peak with the pump running on. [K]"""
    @property
    def steady_temperature(self) -> Value:
        """Temperature the block's water would reach if the burner burned on. [°C]"""

@type_check_only
class Overshoot(Calculation[OvershootResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        metal_mass: _Quantity,
        water_content: _Quantity,
        casing_loss: _Quantity,
        pump_flow: _Quantity,
        flow_length: _Quantity,
        return_length: _Quantity,
        block_temperature: _Quantity,
        burner_output: _Quantity,
        cut_out_temperature: _Quantity,
        flow_cells: _Number | None = ...,
        return_cells: _Number | None = ...,
        circuits: Sequence[Mapping[str, Any]] | None = ...,
        position: Literal["horizontal", "vertical", "wind"] | None = ...,
        correlation: Literal["usual", "Churchill-Chu", "Morgan", "ISO 12241", "Popiel", "Popiel laminar", "Le Fevre-Ede", "Churchill-Bernstein"] | None = ...,
        tube: str | None = ...,
        insulation: str | None = ...,
        finish: str | None = ...,
        further_layers: Sequence[Mapping[str, Any]] | None = ...,
        burner: Literal["fixed", "two_stage", "modulating"] | None = ...,
        metal_specific_heat_capacity: _Quantity | None = ...,
        water_density: _Quantity | None = ...,
        water_specific_heat_capacity: _Quantity | None = ...,
        film_conductance: _Quantity | None = ...,
        standing_heat: _Quantity | None = ...,
        pump_shut_off_pressure: _Quantity | None = ...,
        pressure_drop: _Quantity | None = ...,
        pipe_heat_capacity: _Quantity | None = ...,
        pipe_loss: _Quantity | None = ...,
        insulation_thickness: _Quantity | None = ...,
        insulation_conductivity: _Quantity | None = ...,
        emitter_output: _Quantity | None = ...,
        emitter_exponent: _Number | None = ...,
        emitter_heat_capacity: _Quantity | None = ...,
        emitter_height: _Quantity | None = ...,
        room_temperature: _Quantity | None = ...,
        room_heat_capacity: _Quantity | None = ...,
        room_loss: _Quantity | None = ...,
        outdoor_temperature: _Quantity | None = ...,
        metal_temperature: _Quantity | None = ...,
        circuit_temperature: _Quantity | None = ...,
        low_output: _Quantity | None = ...,
        turn_down_band: _Quantity | None = ...,
        sensor_time_constant: _Quantity | None = ...,
        limit_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> OvershootResult:
        """The highest temperature of the block's water after the control thermostat has stopped the burner, with the pump stopped and with the pump running on, and the margin to the limit thermostat: why a pump runs on."""

overshoot: Overshoot

@type_check_only
class WarmUpResult(Record):
    @property
    def time(self) -> Value:
        """Time until the target is reached. [min]"""
    @property
    def heat_put_in(self) -> Value:
        """Heat the burner has given to the block by then. [kJ]"""
    @property
    def heat_stored(self) -> Value:
        """Heat that block, pipes and emitters have taken up. [kJ]"""
    @property
    def heat_lost(self) -> Value:
        """Heat given off by casing and pipes. [kJ]"""
    @property
    def emitter_heat(self) -> Value:
        """Heat given off by the emitters. [kJ]"""
    @property
    def block_temperature_then(self) -> Value:
        """Temperature of the block's water at that moment. [°C]"""
    @property
    def stop_count(self) -> Value:
        """How often the burner has stopped on the way. [number]"""
    @property
    def highest_temperature(self) -> Value:
        """Highest temperature the point watched ever gets to, at rest or in a cycle that repeats. [°C]"""
    @property
    def limit_trip_time(self) -> Value:
        """Time at which the limit thermostat locks the burner out. [min]"""
    @property
    def imbalance(self) -> Value:
        """Share by which heat put in, stored and given off fail to balance. [number]"""

@type_check_only
class WarmUp(Calculation[WarmUpResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        metal_mass: _Quantity,
        water_content: _Quantity,
        casing_loss: _Quantity,
        pump_flow: _Quantity,
        flow_length: _Quantity,
        return_length: _Quantity,
        block_temperature: _Quantity,
        burner_output: _Quantity,
        cut_out_temperature: _Quantity,
        target_temperature: _Quantity,
        flow_cells: _Number | None = ...,
        return_cells: _Number | None = ...,
        circuits: Sequence[Mapping[str, Any]] | None = ...,
        position: Literal["horizontal", "vertical", "wind"] | None = ...,
        correlation: Literal["usual", "Churchill-Chu", "Morgan", "ISO 12241", "Popiel", "Popiel laminar", "Le Fevre-Ede", "Churchill-Bernstein"] | None = ...,
        tube: str | None = ...,
        insulation: str | None = ...,
        finish: str | None = ...,
        further_layers: Sequence[Mapping[str, Any]] | None = ...,
        burner: Literal["fixed", "two_stage", "modulating"] | None = ...,
        demand: Literal["on", "off"] | None = ...,
        demand_changes: Sequence[_Quantity] | Sequence[float] | None = ...,
        pump: Literal["running", "with_demand"] | None = ...,
        watched: Literal["block", "metal", "flow_end", "emitter", "return_end", "room"] | None = ...,
        metal_specific_heat_capacity: _Quantity | None = ...,
        water_density: _Quantity | None = ...,
        water_specific_heat_capacity: _Quantity | None = ...,
        film_conductance: _Quantity | None = ...,
        standing_heat: _Quantity | None = ...,
        pump_shut_off_pressure: _Quantity | None = ...,
        pressure_drop: _Quantity | None = ...,
        pipe_heat_capacity: _Quantity | None = ...,
        pipe_loss: _Quantity | None = ...,
        insulation_thickness: _Quantity | None = ...,
        insulation_conductivity: _Quantity | None = ...,
        emitter_output: _Quantity | None = ...,
        emitter_exponent: _Number | None = ...,
        emitter_heat_capacity: _Quantity | None = ...,
        emitter_height: _Quantity | None = ...,
        room_temperature: _Quantity | None = ...,
        room_heat_capacity: _Quantity | None = ...,
        room_loss: _Quantity | None = ...,
        outdoor_temperature: _Quantity | None = ...,
        metal_temperature: _Quantity | None = ...,
        circuit_temperature: _Quantity | None = ...,
        low_output: _Quantity | None = ...,
        turn_down_band: _Quantity | None = ...,
        sensor_time_constant: _Quantity | None = ...,
        limit_temperature: _Quantity | None = ...,
        control_differential: _Quantity | None = ...,
        anti_cycling_delay: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> WarmUpResult:
        """How long a plant takes from its start to a temperature at the block, an emitter or the return, with a fixed, two-stage or modulating burner, and where the heat has gone by then."""

warm_up: WarmUp

@type_check_only
class CircuitCyclingResult(Record):
    @property
    def on_time(self) -> Value:
        """Time the burner burns in each cycle. [s]"""
    @property
    def off_time(self) -> Value:
        """Time it stands in each cycle. [s]"""
    @property
    def period(self) -> Value:
        """Time of a whole cycle. [s]"""
    @property
    def start_rate(self) -> Value:
        """Starts per hour. [1/h]"""
    @property
    def duty(self) -> Value:
        """Share of the time the burner burns. [%]"""
    @property
    def mean_output(self) -> Value:
        """Mean heat from the burner over a cycle; what it gives at rest, where it burns without stopping. [kW]"""
    @property
    def steady_temperature(self) -> Value:
        """Temperature of the block's water at which the plant comes to rest, where the burner burns or stands without end. [°C]"""
    @property
    def settling_count(self) -> Value:
        """Cycles until they repeat. [number]"""
    @property
    def followed_time(self) -> Value:
        """Time followed: until the cycles repeat, or the plant comes to rest, or 500 cycles or a week are over. [min]"""
    @property
    def stage_period(self) -> Value:
        """Time of a whole cycle of the stages, where these change over while the burner burns without stopping. [s]"""
    @property
    def limit_trip_time(self) -> Value:
        """Time at which the limit thermostat locks the burner out. [min]"""

@type_check_only
class CircuitCycling(Calculation[CircuitCyclingResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        metal_mass: _Quantity,
        water_content: _Quantity,
        casing_loss: _Quantity,
        pump_flow: _Quantity,
        flow_length: _Quantity,
        return_length: _Quantity,
        block_temperature: _Quantity,
        burner_output: _Quantity,
        cut_out_temperature: _Quantity,
        cut_in_temperature: _Quantity,
        flow_cells: _Number | None = ...,
        return_cells: _Number | None = ...,
        circuits: Sequence[Mapping[str, Any]] | None = ...,
        position: Literal["horizontal", "vertical", "wind"] | None = ...,
        correlation: Literal["usual", "Churchill-Chu", "Morgan", "ISO 12241", "Popiel", "Popiel laminar", "Le Fevre-Ede", "Churchill-Bernstein"] | None = ...,
        tube: str | None = ...,
        insulation: str | None = ...,
        finish: str | None = ...,
        further_layers: Sequence[Mapping[str, Any]] | None = ...,
        burner: Literal["fixed", "two_stage", "modulating"] | None = ...,
        demand: Literal["on", "off"] | None = ...,
        demand_changes: Sequence[_Quantity] | Sequence[float] | None = ...,
        pump: Literal["running", "with_demand"] | None = ...,
        metal_specific_heat_capacity: _Quantity | None = ...,
        water_density: _Quantity | None = ...,
        water_specific_heat_capacity: _Quantity | None = ...,
        film_conductance: _Quantity | None = ...,
        standing_heat: _Quantity | None = ...,
        pump_shut_off_pressure: _Quantity | None = ...,
        pressure_drop: _Quantity | None = ...,
        pipe_heat_capacity: _Quantity | None = ...,
        pipe_loss: _Quantity | None = ...,
        insulation_thickness: _Quantity | None = ...,
        insulation_conductivity: _Quantity | None = ...,
        emitter_output: _Quantity | None = ...,
        emitter_exponent: _Number | None = ...,
        emitter_heat_capacity: _Quantity | None = ...,
        emitter_height: _Quantity | None = ...,
        room_temperature: _Quantity | None = ...,
        room_heat_capacity: _Quantity | None = ...,
        room_loss: _Quantity | None = ...,
        outdoor_temperature: _Quantity | None = ...,
        metal_temperature: _Quantity | None = ...,
        circuit_temperature: _Quantity | None = ...,
        low_output: _Quantity | None = ...,
        turn_down_band: _Quantity | None = ...,
        sensor_time_constant: _Quantity | None = ...,
        limit_temperature: _Quantity | None = ...,
        anti_cycling_delay: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> CircuitCyclingResult:
        """On and off times, starts per hour and duty of a burner on a block with pump, pipes and emitters, once the cycles repeat; fixed, two-stage or modulating."""

circuit_cycling: CircuitCycling

@type_check_only
class CoolDownFitResult(Record):
    @property
    def time_constant(self) -> Value:
        """Time constant at 50 K over the room: heat capacity over loss conductance. [min]"""
    @property
    def time_constant_uncertainty(self) -> Value:
        """Its standard uncertainty. [min]"""
    @property
    def loss_conductance(self) -> Value:
        """Loss conductance at 50 K over the room. [W/K]"""
    @property
    def fitted_loss_uncertainty(self) -> Value:
        """Its standard uncertainty. [W/K]"""
    @property
    def fitted_heat_capacity(self) -> Value:
        """Heat capacity found from the loss conductance expected. [kJ/K]"""
    @property
    def fitted_heat_capacity_uncertainty(self) -> Value:
        """Its standard uncertainty. [kJ/K]"""
    @property
    def deviation(self) -> Value:
        """Fitted less expected loss conductance, over the standard uncertainty of that difference. [number]"""
    @property
    def start_temperature(self) -> Value:
        """Temperature at the time zero of the log, by the fit. [°C]"""
    @property
    def residual(self) -> Value:
        """Root mean square of reading less fit, with two fitted values allowed for. [K]"""
    @property
    def residual_ratio(self) -> Value:
        """That over the uncertainty stated for a reading: near 1 where the model fits. [number]"""

@type_check_only
class CoolDownFit(Calculation[CoolDownFitResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        times: Sequence[_Quantity] | Sequence[float],
        temperatures: Sequence[_Quantity] | Sequence[float] | None = ...,
        heat_capacity: _Quantity | None = ...,
        heat_capacity_uncertainty: _Quantity | None = ...,
        expected_loss_conductance: _Quantity | None = ...,
        loss_conductance_uncertainty: _Quantity | None = ...,
        loss_exponent: _Number | None = ...,
        room_temperature: _Quantity | None = ...,
        room_temperature_uncertainty: _Quantity | None = ...,
        reading_uncertainty: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> CoolDownFitResult:
        """From times and temperatures logged on site: the time constant and from it the loss conductance (the heat capacity being known) or the heat capacity (the loss being known), with uncertainty, and whether the observation agrees with the loss expected."""

cool_down_fit: CoolDownFit

@type_check_only
class TouchWaitResult(Record):
    @property
    def wait(self) -> Value:
        """Time until the surface has fallen to the contact temperature; zero where it has. [min]"""
    @property
    def excess(self) -> Value:
        """Surface less contact temperature now; negative where it may be touched. [K]"""

@type_check_only
class TouchWait(Calculation[TouchWaitResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        policy: str,
        surface_temperature: _Quantity,
        time_constant: _Quantity,
        contact_temperature: _Quantity,
        thresholds: Sequence[Mapping[str, Any]] | None = ...,
        room_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> TouchWaitResult:
        """How long until a cooling surface has fallen to a contact temperature that the caller's policy states for its material and contact time."""

touch_wait: TouchWait

@type_check_only
class InstallationVolumeResult(Record):
    @property
    def pipe_volume(self) -> Value:
        """Volume of the pipes. [L]"""
    @property
    def fittings_volume(self) -> Value:
        """Allowance for fittings. [L]"""
    @property
    def installation_volume(self) -> Value:
        """Volume in all. [L]"""

@type_check_only
class InstallationVolume(Calculation[InstallationVolumeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        pipes: str | Mapping[str, Any] | Sequence[Mapping[str, Any]],
        meter_volume: _Quantity | None = ...,
        fittings_allowance: _Quantity | None = ...,
        other_volume: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> InstallationVolumeResult:
        """Gas held by pipes, fittings and meter: what a tightness test and a purge are reckoned with."""

installation_volume: InstallationVolume

@type_check_only
class TightnessTestResult(Record):
    @property
    def amount_lost(self) -> Value:
        """Amount of gas lost, with all corrections; negative where gas came in. [mol]"""
    @property
    def leak_rate(self) -> Value:
        """Leak at reference conditions, with all corrections, as the mean over the test. [L/h, at reference conditions]"""
    @property
    def leak_rate_uncorrected(self) -> Value:
        """Leak at reference conditions from the bare reading, temperature and barometer taken as steady. [L/h, at reference conditions]"""
    @property
    def leak_rate_in_pipe(self) -> Value:
        """Leak as it flows at the pressure and temperature in the installation. [L/h, at the meter]"""
    @property
    def leak_rate_at_start(self) -> Value:
        """Leak at the start of the test, if it goes with the gauge pressure. [L/h, at reference conditions]"""
    @property
    def decay_rate(self) -> Value:
        """Rate at which the gauge pressure dies away, if the leak goes with it. [1/s]"""
    @property
    def heat_lost_gross(self) -> Value:
        """Heat that leaks away. [W]"""
    @property
    def temperature_effect(self) -> Value:
        """Change of the gauge reading that the temperature alone would make. [mbar]"""
    @property
    def temperature_sensitivity(self) -> Value:
        """Change of the gauge reading for each kelvin. [mbar/K]"""
    @property
    def barometer_effect(self) -> Value:
        """Change of the gauge reading that the barometer alone would make. [mbar]"""
    @property
    def gauge_volume(self) -> Value:
        """Volume by which the liquid of the gauge moved in. [mL]"""
    @property
    def gauge_effect(self) -> Value:
        """Drop that the moving liquid has hidden. [mbar]"""
    @property
    def gauge_factor(self) -> Value:
        """True loss over loss as read, for the moving liquid alone. [number]"""
    @property
    def smallest_detectable_leak(self) -> Value:
        """Least leak that this gauge would have shown in this test. [L/h, at reference conditions]"""

@type_check_only
class TightnessTest(Calculation[TightnessTestResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        installation_volume: _Quantity,
        test_pressure: _Quantity,
        pressure_drop: _Quantity,
        test_duration: _Quantity,
        barometric_pressure: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        temperature_rise: _Quantity | None = ...,
        barometer_rise: _Quantity | None = ...,
        readable_movement: _Quantity | None = ...,
        gauge_bore: _Quantity | None = ...,
        gross_calorific_value: _Quantity | None = ...,
        reference_temperature: _Quantity | None = ...,
        reference_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> TightnessTestResult:
        """Leak rate at reference conditions from a pressure drop, with the effects of temperature, barometer and gauge liquid apart, and the smallest leak the test could show."""

tightness_test: TightnessTest

@type_check_only
class TightnessPlanResult(Record):
    @property
    def smallest_detectable_leak(self) -> Value:
        """Least leak that moves the gauge by the readable movement within the duration. [L/h, at reference conditions]"""
    @property
    def time_needed(self) -> Value:
        """Time in which a leak at the limit moves the gauge by the readable movement. [s]"""
    @property
    def drop_at_limit(self) -> Value:
        """Drop that a leak at the limit makes within the duration. [mbar]"""
    @property
    def temperature_sensitivity(self) -> Value:
        """Change of the gauge reading for each kelvin. [mbar/K]"""
    @property
    def temperature_effect(self) -> Value:
        """Change of the gauge reading by the temperature change feared. [mbar]"""
    @property
    def leak_masked_by_temperature(self) -> Value:
        """Leak that the temperature change feared would feign or hide within the duration. [L/h, at reference conditions]"""

@type_check_only
class TightnessPlan(Calculation[TightnessPlanResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        installation_volume: _Quantity,
        readable_movement: _Quantity,
        test_duration: _Quantity | None = ...,
        leak_limit: _Quantity | None = ...,
        temperature_change: _Quantity | None = ...,
        test_pressure: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        reference_temperature: _Quantity | None = ...,
        reference_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> TightnessPlanResult:
        """The smallest leak a gauge shows in a given time, the time a given leak needs to show, and what temperature does to the reading."""

tightness_plan: TightnessPlan

@type_check_only
class LetByResult(Record):
    @property
    def let_by_rate(self) -> Value:
        """Gas that the valve lets by, less any that leaked away meanwhile; at reference conditions. [L/h, at reference conditions]"""
    @property
    def corrected_rise(self) -> Value:
        """Rise that is left after temperature and barometer are taken out. [mbar]"""
    @property
    def smallest_detectable_flow(self) -> Value:
        """Least flow that this gauge would have shown. [L/h, at reference conditions]"""

@type_check_only
class LetBy(Calculation[LetByResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        installation_volume: _Quantity,
        start_pressure: _Quantity,
        pressure_rise: _Quantity,
        test_duration: _Quantity,
        readable_movement: _Quantity | None = ...,
        temperature_rise: _Quantity | None = ...,
        barometer_rise: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        reference_temperature: _Quantity | None = ...,
        reference_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> LetByResult:
        """Flow past a shut valve from the pressure rise behind it, temperature and barometer taken out."""

let_by: LetBy

@type_check_only
class LeakScalingResult(Record):
    @property
    def leak_rate_laminar(self) -> Value:
        """Leak if it seeps through a long fine path, where viscosity rules. [L/h, at reference conditions]"""
    @property
    def leak_rate_orifice(self) -> Value:
        """Leak if it blows through a short hole, where density rules. [L/h, at reference conditions]"""
    @property
    def gas_ratio_laminar(self) -> Value:
        """Laminar leak of the operating gas over that of the test gas at one pressure. [number]"""
    @property
    def gas_ratio_orifice(self) -> Value:
        """Orifice leak of the operating gas over that of the test gas at one pressure. [number]"""
    @property
    def operating_viscosity(self) -> Value:
        """Viscosity of the operating gas at the temperature. [Pa·s]"""
    @property
    def air_viscosity(self) -> Value:
        """Viscosity of air at the temperature. [Pa·s]"""
    @property
    def air_density(self) -> Value:
        """Density of air at the temperature and one standard atmosphere. [kg/m³]"""

@type_check_only
class LeakScaling(Calculation[LeakScalingResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        test_pressure: _Quantity,
        operating_pressure: _Quantity,
        test_gas: str | Mapping[str, Any] | None = ...,
        operating_gas: str | Mapping[str, Any] | None = ...,
        leak_rate: _Quantity | None = ...,
        test_relative_density: _Number | None = ...,
        operating_relative_density: _Number | None = ...,
        test_viscosity: _Quantity | None = ...,
        operating_viscosity: _Quantity | None = ...,
        temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> LeakScalingResult:
        """What a leak measured at test pressure, perhaps with air, would be at operating pressure with the gas: as a fine seep and as a hole, between which the truth lies."""

leak_scaling: LeakScaling

@type_check_only
class LeakClassResult(Record):
    @property
    def class_number(self) -> Value:
        """Number of the class in the caller's list, from 1. [number]"""
    @property
    def class_from(self) -> Value:
        """Leak at which the class begins; it belongs to the class. [L/h, at reference conditions]"""
    @property
    def class_below(self) -> Value:
        """Leak at which the next class begins. [L/h, at reference conditions]"""

@type_check_only
class LeakClass(Calculation[LeakClassResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        classes: str | Mapping[str, Any] | Sequence[Mapping[str, Any]],
        leak_rate: _Quantity,
        smallest_detectable_leak: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> LeakClassResult:
        """The class of a leak rate in a list of classes that the caller takes from the local rule."""

leak_class: LeakClass

@type_check_only
class PurgeResult(Record):
    @property
    def purge_volume(self) -> Value:
        """Volume to pass. [L, at the meter]"""
    @property
    def dial_revolutions(self) -> Value:
        """Revolutions of the test dial, or steps of the index. [number]"""
    @property
    def purge_time(self) -> Value:
        """Time to pass it. [s]"""

@type_check_only
class Purge(Calculation[PurgeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        installation_volume: _Quantity,
        purge_factor: _Number,
        dial_volume: _Quantity | None = ...,
        purge_flow: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> PurgeResult:
        """Volume of gas to pass through an installation, in meter readings and in time. The factor comes from the local procedure."""

purge: Purge

@type_check_only
class PurgeVelocityResult(Record):
    @property
    def purge_flow(self) -> Value:
        """Flow that gives the velocity. [m³/h, at the meter]"""
    @property
    def travel_time(self) -> Value:
        """Time in which the front passes the length. [s]"""

@type_check_only
class PurgeVelocity(Calculation[PurgeVelocityResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        bore: _Quantity,
        velocity: _Quantity,
        length: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> PurgeVelocityResult:
        """Flow that keeps a given velocity in a pipe, and the time the front takes to pass its length."""

purge_velocity: PurgeVelocity

@type_check_only
class BlockCoolDownResult(Record):
    @property
    def time(self) -> Value:
        """Time until the target is reached. [min]"""
    @property
    def heat_released(self) -> Value:
        """Heat the mass has released by then. [kJ]"""
    @property
    def loss_at_start(self) -> Value:
        """Loss at the start. [W]"""
    @property
    def loss_at_target(self) -> Value:
        """Loss at the target temperature. [W]"""
    @property
    def time_constant(self) -> Value:
        """Heat capacity times temperature difference over loss, at the start. [min]"""
    @property
    def exponential_time(self) -> Value:
        """Time by the exponential with that time constant: too short where the loss falls faster than the difference. [min]"""
    @property
    def steady_temperature(self) -> Value:
        """Temperature after an endless time. [°C]"""

@type_check_only
class BlockCoolDown(Calculation[BlockCoolDownResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        heat_capacity: _Quantity,
        start_temperature: _Quantity,
        target_temperature: _Quantity,
        loss_conductance: _Quantity | None = ...,
        convective_loss: _Quantity | None = ...,
        loss_exponent: _Number | None = ...,
        radiating_area: _Quantity | None = ...,
        emissivity: _Number | None = ...,
        standing_heat: _Quantity | None = ...,
        room_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> BlockCoolDownResult:
        """How long a hot mass (a block, a casing, a standing pipe) takes to fall to a temperature, by a linear loss, natural convection and radiation together."""

block_cool_down: BlockCoolDown

@type_check_only
class BurnerCyclingResult(Record):
    @property
    def differential(self) -> Value:
        """Difference of the two operating values. [K]"""
    @property
    def on_time(self) -> Value:
        """Time the burner burns in each cycle. [s]"""
    @property
    def off_time(self) -> Value:
        """Time it stands in each cycle. [s]"""
    @property
    def period(self) -> Value:
        """Time of a whole cycle. [s]"""
    @property
    def start_rate(self) -> Value:
        """Starts per hour. [1/h]"""
    @property
    def duty(self) -> Value:
        """Share of the time the burner burns. [%]"""
    @property
    def lowest_temperature(self) -> Value:
        """Temperature at which the burner lights; below the cut-in where the delay holds it back. [°C]"""
    @property
    def heat_capacity_needed(self) -> Value:
        """Heat capacity that gives the on-time wanted. [kJ/K]"""
    @property
    def water_needed(self) -> Value:
        """Water to add for it; negative where there is more than enough. [L]"""

@type_check_only
class BurnerCycling(Calculation[BurnerCyclingResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        heat_capacity: _Quantity,
        burner_output: _Quantity,
        cut_out_temperature: _Quantity,
        cut_in_temperature: _Quantity,
        load: _Quantity | None = ...,
        load_conductance: _Quantity | None = ...,
        emitter_output: _Quantity | None = ...,
        emitter_exponent: _Number | None = ...,
        room_temperature: _Quantity | None = ...,
        anti_cycling_delay: _Quantity | None = ...,
        wanted_on_time: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> BurnerCyclingResult:
        """On and off times, starts per hour and duty of a burner under a steady load, the effect of the differential, and the water content for a wanted on-time; the heated mass has one temperature."""

burner_cycling: BurnerCycling

@type_check_only
class TubeRunResult(Record):
    @property
    def outer_diameter(self) -> Value:
        """Outside diameter. [mm]"""
    @property
    def wall_thickness(self) -> Value:
        """Wall thickness. [mm]"""
    @property
    def bore(self) -> Value:
        """Bore. [mm]"""
    @property
    def content_per_length(self) -> Value:
        """Water content per metre. [L/m]"""
    @property
    def mass_per_length(self) -> Value:
        """Mass of the empty tube per metre. [kg/m]"""
    @property
    def content(self) -> Value:
        """Water content. [L]"""
    @property
    def mass(self) -> Value:
        """Mass of the empty tube. [kg]"""
    @property
    def wall_heat_capacity(self) -> Value:
        """Heat capacity of the tube without its water. [kJ/K]"""
    @property
    def outer_surface(self) -> Value:
        """Outside surface. [m²]"""

@type_check_only
class TubeRun(Calculation[TubeRunResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        tube: str | Mapping[str, Any] | Sequence[Mapping[str, Any]],
        length: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> TubeRunResult:
        """Bore, water content, mass and heat capacity of a length of tube of a standard size or of any size."""

tube_run: TubeRun

@type_check_only
class MaterialPropertiesResult(Record):
    @property
    def density(self) -> Value:
        """Density. [kg/m³]"""
    @property
    def specific_heat_capacity(self) -> Value:
        """Specific heat capacity. [J/(kg·K)]"""
    @property
    def least_heat_capacity(self) -> Value:
        """Lowest specific heat capacity in print. [J/(kg·K)]"""
    @property
    def greatest_heat_capacity(self) -> Value:
        """Highest specific heat capacity in print. [J/(kg·K)]"""
    @property
    def thermal_conductivity(self) -> Value:
        """Thermal conductivity. [W/(m·K)]"""
    @property
    def emissivity(self) -> Value:
        """Emissivity. [number]"""
    @property
    def least_emissivity(self) -> Value:
        """Lowest emissivity in print. [number]"""
    @property
    def greatest_emissivity(self) -> Value:
        """Highest emissivity in print. [number]"""

@type_check_only
class MaterialProperties(Calculation[MaterialPropertiesResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        material: Literal["copper", "iron", "aluminium", "carbon steel", "stainless steel 304", "cast iron 4 % C", "grey cast iron", "brass 70/30", "cast aluminium alloy", "PEX", "multilayer wall", "mineral wool", "polyisocyanurate", "calcium silicate", "elastomeric foam", "polyethylene foam", "phenolic foam", "polished copper", "tarnished copper", "paint", "black steel", "cast iron surface", "aluminium paint", "polished aluminium cladding", "bright galvanised steel", "plastic", "insulation jacket"],
        temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> MaterialPropertiesResult:
        """Density, heat capacity, conductivity and emissivity of a metal, an insulation or a finish, with the spread of the prints."""

material_properties: MaterialProperties

@type_check_only
class FlowFromHeatResult(Record):
    @property
    def temperature_drop(self) -> Value:
        """Temperature drop from flow to return. [K]"""
    @property
    def mean_specific_heat_capacity(self) -> Value:
        """Mean heat capacity between the two temperatures: enthalpy difference over temperature drop. [J/(kg·K)]"""
    @property
    def mass_flow(self) -> Value:
        """Mass flow. [kg/s]"""
    @property
    def volume_flow_at_return(self) -> Value:
        """Volume flow where the water is at return temperature (pump or meter in the return). [L/h]"""
    @property
    def volume_flow_at_flow(self) -> Value:
        """Volume flow where the water is at flow temperature. [L/h]"""
    @property
    def volume_flow_at_mean(self) -> Value:
        """Volume flow at the mean of the two temperatures. [L/h]"""
    @property
    def volume_flow_by_rule(self) -> Value:
        """Volume flow by the rule of thumb of 4186 J/(kg K) and 1 kg/L, for comparison. [L/h]"""

@type_check_only
class FlowFromHeat(Calculation[FlowFromHeatResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        heat_output: _Quantity,
        flow_temperature: _Quantity,
        return_temperature: _Quantity,
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        pressure: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FlowFromHeatResult:
        """The water flow that carries a heat output between flow and return temperature, from the enthalpies of the real liquid."""

flow_from_heat: FlowFromHeat

@type_check_only
class HeatFromFlowResult(Record):
    @property
    def temperature_drop(self) -> Value:
        """Temperature drop from flow to return. [K]"""
    @property
    def mass_flow(self) -> Value:
        """Mass flow. [kg/s]"""
    @property
    def heat_output(self) -> Value:
        """Heat carried. [kW]"""

@type_check_only
class HeatFromFlow(Calculation[HeatFromFlowResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        volume_flow: _Quantity,
        flow_temperature: _Quantity,
        return_temperature: _Quantity,
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        flow_measured_in: Literal["return", "flow"] | None = ...,
        pressure: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> HeatFromFlowResult:
        """The heat that a measured water flow carries between flow and return temperature: the output by the water side."""

heat_from_flow: HeatFromFlow

@type_check_only
class EmitterOutputResult(Record):
    @property
    def mean_excess(self) -> Value:
        """Mean excess temperature now. [K]"""
    @property
    def rated_mean_excess(self) -> Value:
        """Mean excess temperature at the rated condition. [K]"""
    @property
    def output_factor(self) -> Value:
        """Share of the rated output; its reverse is how much larger an emitter must be rated. [number]"""
    @property
    def heat_output(self) -> Value:
        """Output now. [W]"""
    @property
    def needed_rated_output(self) -> Value:
        """Output at the rated condition that an emitter needs to give the wanted one now. [W]"""

@type_check_only
class EmitterOutput(Calculation[EmitterOutputResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        rated_output: _Quantity,
        flow_temperature: _Quantity,
        return_temperature: _Quantity,
        mean_excess: Literal["arithmetic", "logarithmic"] | None = ...,
        exponent: _Number | None = ...,
        room_temperature: _Quantity | None = ...,
        rated_flow_temperature: _Quantity | None = ...,
        rated_return_temperature: _Quantity | None = ...,
        rated_room_temperature: _Quantity | None = ...,
        wanted_output: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> EmitterOutputResult:
        """What a radiator rated at one flow, return and room temperature gives at another, and the rating that a wanted output needs there."""

emitter_output: EmitterOutput

@type_check_only
class EmitterAtFlowResult(Record):
    @property
    def return_temperature(self) -> Value:
        """Return temperature. [°C]"""
    @property
    def temperature_drop(self) -> Value:
        """Temperature drop. [K]"""
    @property
    def heat_output(self) -> Value:
        """Output. [W]"""
    @property
    def output_factor(self) -> Value:
        """Share of the rated output. [number]"""

@type_check_only
class EmitterAtFlow(Calculation[EmitterAtFlowResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        rated_output: _Quantity,
        mass_flow: _Quantity,
        flow_temperature: _Quantity,
        mean_excess: Literal["arithmetic", "logarithmic"] | None = ...,
        exponent: _Number | None = ...,
        room_temperature: _Quantity | None = ...,
        rated_mean_excess: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> EmitterAtFlowResult:
        """The return temperature at which the heat the water gives up is the heat the emitter gives off, and that heat."""

emitter_at_flow: EmitterAtFlow

@type_check_only
class WaterPressureDropResult(Record):
    @property
    def velocity(self) -> Value:
        """Mean velocity. [m/s]"""
    @property
    def reynolds_number(self) -> Value:
        """Reynolds number. [number]"""
    @property
    def friction_factor(self) -> Value:
        """Darcy friction factor. [number]"""
    @property
    def velocity_pressure(self) -> Value:
        """Velocity pressure. [Pa]"""
    @property
    def drop_per_length(self) -> Value:
        """Pressure drop per metre of tube. [Pa/m]"""
    @property
    def tube_drop(self) -> Value:
        """Pressure drop of the tube and equivalent lengths. [kPa]"""
    @property
    def fitting_drop(self) -> Value:
        """Pressure drop of fittings by loss coefficient. [kPa]"""
    @property
    def pressure_drop(self) -> Value:
        """Pressure drop of the whole. [kPa]"""
    @property
    def pressure_drop_low(self) -> Value:
        """Least it may be; less than the drop itself only where the flow is in transition. [kPa]"""
    @property
    def pressure_drop_high(self) -> Value:
        """Most it may be; more than the drop itself only where the flow is in transition. [kPa]"""
    @property
    def head_loss(self) -> Value:
        """Head of the same liquid. [m]"""
    @property
    def hydraulic_power(self) -> Value:
        """Power that the drop takes from the liquid; a pump needs this over its efficiency. [W]"""

@type_check_only
class WaterPressureDrop(Calculation[WaterPressureDropResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        tube: str | Mapping[str, Any] | Sequence[Mapping[str, Any]],
        volume_flow: _Quantity,
        length: _Quantity,
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        friction: Literal["colebrook", "haaland", "swamee-jain"] | None = ...,
        fittings: str | Mapping[str, Any] | Sequence[Mapping[str, Any]] | None = ...,
        temperature: _Quantity | None = ...,
        pressure: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        loss_coefficient: _Number | None = ...,
        equivalent_length: _Quantity | None = ...,
        density: _Quantity | None = ...,
        dynamic_viscosity: _Quantity | None = ...,
        greatest_velocity: _Quantity | None = ...,
        least_velocity: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> WaterPressureDropResult:
        """Velocity and pressure drop of water or a glycol mixture through a length of tube with its fittings."""

water_pressure_drop: WaterPressureDrop

@type_check_only
class FittingLossResult(Record):
    @property
    def turbulent_friction_factor(self) -> Value:
        """Friction factor of fully turbulent flow in commercial steel pipe of this bore. [number]"""
    @property
    def loss_coefficient(self) -> Value:
        """Loss coefficient on the velocity pressure. [number]"""
    @property
    def length_ratio(self) -> Value:
        """Equivalent length in bores; for a loss coefficient by the fully turbulent friction factor. [number]"""
    @property
    def equivalent_length(self) -> Value:
        """Equivalent length of the same tube. [m]"""

@type_check_only
class FittingLoss(Calculation[FittingLossResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fitting: Literal["elbow 90", "elbow 45", "tee through", "tee branch", "globe valve", "ball valve", "gate valve", "angle valve", "swing check valve", "bend 90 radius 1", "bend 90 radius 1.5", "bend 90 radius 2", "bend 90 radius 3", "bend 90 radius 4", "bend 90 radius 6", "smooth bend 90 flanged", "smooth bend 90 threaded", "mitre bend 90", "mitre bend 90 with vanes", "threaded elbow 45", "return bend 180 flanged", "return bend 180 threaded", "tee branch flanged", "tee branch threaded", "tee through flanged", "tee through threaded", "threaded union", "globe valve open", "angle valve open", "ball valve open", "swing check valve open", "gate valve open", "gate valve quarter closed", "gate valve half closed", "gate valve three quarters closed", "inlet sharp", "inlet rounded", "inlet re-entrant", "outlet", "gas bend 45 copper 15 mm", "gas bend 90 copper 15 mm", "gas bend 45 copper 22 mm", "gas bend 90 copper 22 mm"],
        bore: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> FittingLossResult:
        """Loss coefficient and equivalent length of a fitting or valve in a tube of a bore."""

fitting_loss: FittingLoss

@type_check_only
class StaticHeadResult(Record):
    @property
    def density(self) -> Value:
        """Density of the liquid. [kg/m³]"""
    @property
    def static_pressure(self) -> Value:
        """Pressure of the column. [bar]"""

@type_check_only
class StaticHead(Calculation[StaticHeadResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        height: _Quantity,
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        temperature: _Quantity | None = ...,
        pressure: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> StaticHeadResult:
        """The pressure that a height of water makes at its temperature."""

static_head: StaticHead

@type_check_only
class DutyPointResult(Record):
    @property
    def volume_flow(self) -> Value:
        """Flow. [L/h]"""
    @property
    def pressure(self) -> Value:
        """Pressure the pump makes and the system takes. [kPa]"""
    @property
    def flow_ratio(self) -> Value:
        """Share of the known flow. [number]"""
    @property
    def hydraulic_power(self) -> Value:
        """Power given to the water. [W]"""

@type_check_only
class DutyPoint(Calculation[DutyPointResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        pump_flows: Sequence[_Quantity] | Sequence[float],
        known_flow: _Quantity,
        known_pressure_drop: _Quantity,
        pump_pressures: Sequence[_Quantity] | Sequence[float] | None = ...,
        exponent: _Number | None = ...,
        static_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> DutyPointResult:
        """Flow and pressure at which a pump's curve meets the curve of the system."""

duty_point: DutyPoint

@type_check_only
class ValveKvResult(Record):
    @property
    def density(self) -> Value:
        """Density of the liquid. [kg/m³]"""
    @property
    def valve_kv(self) -> Value:
        """Kv: flow at a drop of 1 bar of water of 1000 kg/m³. [m³/h]"""

@type_check_only
class ValveKv(Calculation[ValveKvResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        volume_flow: _Quantity,
        pressure_drop: _Quantity,
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        temperature: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ValveKvResult:
        """The Kv to which a valve must be set to take a pressure drop at a flow."""

valve_kv: ValveKv

@type_check_only
class CircuitBalanceResult(Record):
    @property
    def index_circuit(self) -> Value:
        """Number of the index circuit, counted from 1: the one with the greatest pressure drop. [number]"""
    @property
    def index_pressure_drop(self) -> Value:
        """Its pressure drop: what the pump must make. [kPa]"""
    @property
    def least_pressure_drop(self) -> Value:
        """Smallest pressure drop of any circuit. [kPa]"""
    @property
    def index_flow(self) -> Value:
        """Flow of the index circuit. [L/h]"""
    @property
    def greatest_velocity(self) -> Value:
        """Greatest velocity in any section. [m/s]"""

@type_check_only
class CircuitBalance(Calculation[CircuitBalanceResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        sections: str | Mapping[str, Any] | Sequence[Mapping[str, Any]],
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        friction: Literal["colebrook", "haaland", "swamee-jain"] | None = ...,
        circuits: str | Mapping[str, Any] | Sequence[Mapping[str, Any]] | None = ...,
        temperature: _Quantity | None = ...,
        pressure: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> CircuitBalanceResult:
        """Pressure drop of every circuit, the index circuit, and the Kv to which the balancing valve of each other circuit is set."""

circuit_balance: CircuitBalance

@type_check_only
class ExpansionVesselResult(Record):
    @property
    def expansion_share(self) -> Value:
        """Expansion of the liquid as a share of its cold volume. [%]"""
    @property
    def expansion_volume(self) -> Value:
        """Expansion volume. [L]"""
    @property
    def water_reserve(self) -> Value:
        """Water reserve. [L]"""
    @property
    def static_pressure(self) -> Value:
        """Static pressure of the cold system at the vessel. [bar]"""
    @property
    def pre_charge(self) -> Value:
        """Pre-charge of the vessel, without water in it. [bar, gauge]"""
    @property
    def final_pressure(self) -> Value:
        """Pressure that the hot system may reach. [bar, gauge]"""
    @property
    def acceptance(self) -> Value:
        """Share of the vessel that water can take between pre-charge and final pressure. [number]"""
    @property
    def vessel_volume(self) -> Value:
        """Least vessel, with the reserve by share of the content. [L]"""
    @property
    def vessel_volume_with_fifth(self) -> Value:
        """Least vessel where a fifth of it is the reserve: the rule for vessels of up to 15 L. [L]"""
    @property
    def vessel_volume_without_reserve(self) -> Value:
        """Least vessel with no reserve at all, for comparison. [L]"""
    @property
    def fill_pressure(self) -> Value:
        """Least pressure to which the cold system is filled, so that the reserve is in the vessel. [bar, gauge]"""

@type_check_only
class ExpansionVessel(Calculation[ExpansionVesselResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        system_content: _Quantity,
        highest_temperature: _Quantity,
        static_height: _Quantity,
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        fill_temperature: _Quantity | None = ...,
        pressure_margin: _Quantity | None = ...,
        least_pre_charge: _Quantity | None = ...,
        safety_valve_pressure: _Quantity | None = ...,
        reserve_share: _Quantity | None = ...,
        least_reserve: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        expansion_share: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ExpansionVesselResult:
        """Expansion volume, water reserve, pre-charge, vessel size and fill pressure of a sealed heating system."""

expansion_vessel: ExpansionVessel

@type_check_only
class VesselCheckResult(Record):
    @property
    def expansion_volume(self) -> Value:
        """Expansion volume of the content. [L]"""
    @property
    def gas_volume_cold(self) -> Value:
        """Gas in the vessel when cold. [L]"""
    @property
    def water_reserve(self) -> Value:
        """Water in the vessel when cold: the reserve. [L]"""
    @property
    def take_up(self) -> Value:
        """Most water the vessel takes up between cold and the pressure allowed when hot. [L]"""
    @property
    def hot_pressure(self) -> Value:
        """Pressure of the hot system, if the safety valve did not lift. [bar, gauge]"""
    @property
    def final_pressure(self) -> Value:
        """Pressure that the hot system may reach. [bar, gauge]"""
    @property
    def water_lost(self) -> Value:
        """Water that leaves by the safety valve on heating up, and is missing when cold again. [L]"""

@type_check_only
class VesselCheck(Calculation[VesselCheckResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        vessel_volume: _Quantity,
        pre_charge: _Quantity,
        fill_pressure: _Quantity,
        system_content: _Quantity,
        highest_temperature: _Quantity,
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        fill_temperature: _Quantity | None = ...,
        safety_valve_pressure: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> VesselCheckResult:
        """Cold and hot pressure of a sealed system with the vessel and pre-charge found on it, and the water the safety valve would let out."""

vessel_check: VesselCheck

@type_check_only
class SystemContentResult(Record):
    @property
    def pipe_length(self) -> Value:
        """Length of all pipes. [m]"""
    @property
    def pipe_content(self) -> Value:
        """Water in all pipes. [L]"""
    @property
    def pipe_mass(self) -> Value:
        """Mass of all pipes, empty. [kg]"""
    @property
    def pipe_heat_capacity(self) -> Value:
        """Heat capacity of all pipes, empty. [kJ/K]"""
    @property
    def system_content(self) -> Value:
        """Water that circulates: all but the cistern's. [L]"""
    @property
    def content_with_cistern(self) -> Value:
        """Water to fill everything, the cistern too. [L]"""

@type_check_only
class SystemContent(Calculation[SystemContentResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        pipes: str | Mapping[str, Any] | Sequence[Mapping[str, Any]] | None = ...,
        emitter_content: _Quantity | None = ...,
        boiler_content: _Quantity | None = ...,
        coil_content: _Quantity | None = ...,
        cistern_content: _Quantity | None = ...,
        other_content: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> SystemContentResult:
        """Water in pipes, emitters, boiler, cylinder coil and cistern, with the mass and heat capacity of the pipes."""

system_content: SystemContent

@type_check_only
class HeatStoreResult(Record):
    @property
    def metal_heat_capacity(self) -> Value:
        """Heat capacity of the metal. [kJ/K]"""
    @property
    def water_heat_capacity(self) -> Value:
        """Heat capacity of the water: its enthalpy difference over the temperature difference. [kJ/K]"""
    @property
    def heat_capacity(self) -> Value:
        """Heat capacity of the whole. [kJ/K]"""
    @property
    def heat(self) -> Value:
        """Heat given off from start to end; negative where the parts warm up. [kWh]"""
    @property
    def water_share(self) -> Value:
        """Share of it that the water gives. [%]"""

@type_check_only
class HeatStore(Calculation[HeatStoreResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        start_temperature: _Quantity,
        end_temperature: _Quantity,
        fluid: Literal["water", "propylene glycol", "ethylene glycol"] | None = ...,
        water_content: _Quantity | None = ...,
        glycol_mass_fraction: _Quantity | None = ...,
        cast_iron_mass: _Quantity | None = ...,
        cast_iron_heat_capacity: _Quantity | None = ...,
        steel_mass: _Quantity | None = ...,
        copper_mass: _Quantity | None = ...,
        aluminium_mass: _Quantity | None = ...,
        insulation_mass: _Quantity | None = ...,
        insulation_heat_capacity: _Quantity | None = ...,
        other_heat_capacity: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> HeatStoreResult:
        """Heat capacity of iron, steel, copper, aluminium, insulation and water, and the heat they give off between two temperatures."""

heat_store: HeatStore

@type_check_only
class InhibitorDoseResult(Record):
    @property
    def full_dose(self) -> Value:
        """Product for water that holds none. [L]"""
    @property
    def dose(self) -> Value:
        """Product to add. [L]"""
    @property
    def containers(self) -> Value:
        """Containers that hold it, in parts of one. [number]"""

@type_check_only
class InhibitorDose(Calculation[InhibitorDoseResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        system_content: _Quantity,
        dose_ratio: _Quantity | None = ...,
        strength_left: _Quantity | None = ...,
        container_content: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> InhibitorDoseResult:
        """Litres of inhibitor that a system's content needs, less what is still in it."""

inhibitor_dose: InhibitorDose

@type_check_only
class AntifreezeDoseResult(Record):
    @property
    def glycol_mass_fraction(self) -> Value:
        """Glycol needed, by mass. [%]"""
    @property
    def needed_volume_fraction(self) -> Value:
        """Glycol needed, by volume. [%]"""
    @property
    def product_volume(self) -> Value:
        """Product to add, after as much of the present water has been drained; zero if there is enough. [L]"""
    @property
    def glycol_mass(self) -> Value:
        """Mass of glycol in the system afterwards. [kg]"""

@type_check_only
class AntifreezeDose(Calculation[AntifreezeDoseResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        system_content: _Quantity,
        frost_temperature: _Quantity,
        antifreeze: Literal["propylene glycol", "ethylene glycol"] | None = ...,
        glycol_volume_fraction: _Quantity | None = ...,
        product_strength: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> AntifreezeDoseResult:
        """Share of glycol that protects down to a temperature, and the product to add for a content."""

antifreeze_dose: AntifreezeDose

@type_check_only
class PartialDrainResult(Record):
    @property
    def product_lost(self) -> Value:
        """Product that went with the water. [L]"""
    @property
    def fraction_after(self) -> Value:
        """Share of product after filling up again. [%]"""
    @property
    def strength_left(self) -> Value:
        """Share of the earlier strength that is left. [%]"""
    @property
    def product_needed(self) -> Value:
        """Product in the refill that makes the wanted share. [L]"""
    @property
    def water_needed(self) -> Value:
        """Plain water of that refill. [L]"""
    @property
    def fill_time(self) -> Value:
        """Time to fill up again. [min]"""

@type_check_only
class PartialDrain(Calculation[PartialDrainResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        system_content: _Quantity,
        drained_volume: _Quantity,
        product_fraction: _Quantity,
        refill_fraction: _Quantity | None = ...,
        wanted_fraction: _Quantity | None = ...,
        fill_flow: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> PartialDrainResult:
        """Strength of inhibitor or antifreeze left after part of the water was drained and replaced, and the refill that restores it."""

partial_drain: PartialDrain

@type_check_only
class InjectorFlowResult(Record):
    @property
    def gas_density(self) -> Value:
        """Density of the gas. [kg/m³]"""
    @property
    def jet_velocity(self) -> Value:
        """Velocity of the jet where it is narrowest, without loss. [m/s]"""
    @property
    def gas_flow(self) -> Value:
        """Flow of all injectors, at the conditions of the air density stated. [m³/h]"""
    @property
    def gas_flow_practical(self) -> Value:
        """Flow by the practical form 0.0467 C_d A √(p/d), which implies air of 1.1885 kg/m³. [m³/h]"""
    @property
    def heat_input_gross(self) -> Value:
        """Heat input on the gross basis. [kW, gross]"""

@type_check_only
class InjectorFlow(Calculation[InjectorFlowResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        injector_diameter: _Quantity,
        burner_pressure: _Quantity,
        discharge_coefficient: _Number,
        fuel: str | Mapping[str, Any] | None = ...,
        reference: str | None = ...,
        relative_density: _Number | None = ...,
        air_density: _Quantity | None = ...,
        injector_count: _Number | None = ...,
        gross_calorific_value: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> InjectorFlowResult:
        """Flow and heat input of burner injectors from bore, pressure, discharge coefficient and relative density."""

injector_flow: InjectorFlow

@type_check_only
class InjectorSizeResult(Record):
    @property
    def gas_flow(self) -> Value:
        """Flow of all injectors. [m³/h]"""
    @property
    def injector_area(self) -> Value:
        """Area of one injector. [mm²]"""
    @property
    def injector_diameter(self) -> Value:
        """Diameter of one injector. [mm]"""

@type_check_only
class InjectorSize(Calculation[InjectorSizeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        burner_pressure: _Quantity,
        discharge_coefficient: _Number,
        fuel: str | Mapping[str, Any] | None = ...,
        reference: str | None = ...,
        heat_input_gross: _Quantity | None = ...,
        gross_calorific_value: _Quantity | None = ...,
        gas_flow: _Quantity | None = ...,
        relative_density: _Number | None = ...,
        air_density: _Quantity | None = ...,
        injector_count: _Number | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> InjectorSizeResult:
        """Bore of a burner injector for a heat input or a flow at a pressure."""

injector_size: InjectorSize

@type_check_only
class BurnerPressureResult(Record):
    @property
    def new_heat_input(self) -> Value:
        """Heat input at the new pressure with the same injector. [kW]"""
    @property
    def heat_input_ratio(self) -> Value:
        """New over known heat input with the same injector. [number]"""
    @property
    def pressure_for_wanted(self) -> Value:
        """Burner pressure that gives the wanted heat input with the same injector. [mbar, gauge]"""
    @property
    def injector_diameter_ratio(self) -> Value:
        """Injector diameter over the present one that gives the wanted heat input at the new pressure. [number]"""
    @property
    def gross_wobbe_index(self) -> Value:
        """Gross Wobbe index of the gas known. [MJ/m³, gross]"""
    @property
    def new_gross_wobbe_index(self) -> Value:
        """Gross Wobbe index of the new gas. [MJ/m³, gross]"""
    @property
    def wobbe_ratio(self) -> Value:
        """New over known Wobbe index. [number]"""
    @property
    def modified_wobbe_ratio(self) -> Value:
        """New over known modified Wobbe index, which holds the temperature of the gas as well. [number]"""
    @property
    def reference_flow_ratio(self) -> Value:
        """New over known flow at reference conditions. [number]"""

@type_check_only
class BurnerPressure(Calculation[BurnerPressureResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        heat_input: _Quantity,
        burner_pressure: _Quantity,
        fuel: str | Mapping[str, Any] | None = ...,
        reference: str | None = ...,
        new_fuel: str | Mapping[str, Any] | None = ...,
        new_burner_pressure: _Quantity | None = ...,
        wanted_heat_input: _Quantity | None = ...,
        gross_calorific_value: _Quantity | None = ...,
        new_gross_calorific_value: _Quantity | None = ...,
        relative_density: _Number | None = ...,
        new_relative_density: _Number | None = ...,
        gas_temperature: _Quantity | None = ...,
        new_gas_temperature: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        new_barometric_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> BurnerPressureResult:
        """Heat input at another burner pressure, gas, gas temperature or barometer by the square law of the injector, the pressure for a wanted heat input, and the injector for it."""

burner_pressure: BurnerPressure

@type_check_only
class AltitudeResult(Record):
    @property
    def barometric_pressure(self) -> Value:
        """Barometric pressure at the place, as a barometer shows it. [mbar, absolute]"""
    @property
    def pressure_ratio(self) -> Value:
        """Pressure at the place over 1013.25 mbar. [number]"""
    @property
    def air_density_ratio(self) -> Value:
        """Air density over that at 15 °C and 1013.25 mbar. [number]"""
    @property
    def heat_input_ratio(self) -> Value:
        """Heat input over that at sea level, gas temperature, injector and burner pressure the same. [number]"""

@type_check_only
class Altitude(Calculation[AltitudeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        altitude: _Quantity,
        sea_level_pressure: _Quantity | None = ...,
        air_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> AltitudeResult:
        """Barometric pressure at a height, and with it the density of air and the heat input of a burner left as it was set at sea level."""

altitude: Altitude

@type_check_only
class GasPipeDropResult(Record):
    @property
    def gas_flow(self) -> Value:
        """Flow at reference conditions. [m³/h, at reference conditions]"""
    @property
    def flow_in_pipe(self) -> Value:
        """Flow as it enters the pipe. [m³/h, at the meter]"""
    @property
    def density_in_pipe(self) -> Value:
        """Density as it enters the pipe. [kg/m³]"""
    @property
    def viscosity(self) -> Value:
        """Dynamic viscosity. [Pa·s]"""
    @property
    def velocity(self) -> Value:
        """Mean velocity at the inlet. [m/s]"""
    @property
    def reynolds_number(self) -> Value:
        """Reynolds number. [number]"""
    @property
    def friction_factor_low(self) -> Value:
        """Least Darcy friction factor. [number]"""
    @property
    def friction_factor_high(self) -> Value:
        """Greatest Darcy friction factor. [number]"""
    @property
    def drop_at_inlet_density_low(self) -> Value:
        """Least friction drop with the density of the inlet. [Pa]"""
    @property
    def drop_at_inlet_density_high(self) -> Value:
        """Greatest friction drop with the density of the inlet. [Pa]"""
    @property
    def pressure_drop_low(self) -> Value:
        """Least friction drop, the gas expanding. [Pa]"""
    @property
    def pressure_drop_high(self) -> Value:
        """Greatest friction drop, the gas expanding: the one to reckon with. [Pa]"""
    @property
    def height_gain(self) -> Value:
        """Gain of gauge pressure by height; negative where a light gas goes down or a heavy one up. [Pa]"""
    @property
    def outlet_pressure_low(self) -> Value:
        """Least gauge pressure at the end of the pipe: the one to reckon with. [mbar, gauge]"""
    @property
    def outlet_pressure_high(self) -> Value:
        """Greatest gauge pressure at the end of the pipe. [mbar, gauge]"""

@type_check_only
class GasPipeDrop(Calculation[GasPipeDropResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        length: _Quantity,
        inlet_pressure: _Quantity,
        fuel: str | Mapping[str, Any] | None = ...,
        reference: str | None = ...,
        friction: Literal["Colebrook", "Haaland", "Swamee-Jain"] | None = ...,
        tube: str | None = ...,
        fittings: str | Mapping[str, Any] | Sequence[Mapping[str, Any]] | None = ...,
        gas_flow: _Quantity | None = ...,
        heat_input_gross: _Quantity | None = ...,
        equivalent_length: _Quantity | None = ...,
        loss_coefficient: _Number | None = ...,
        rise: _Quantity | None = ...,
        bore: _Quantity | None = ...,
        roughness: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        gas_density: _Quantity | None = ...,
        gas_viscosity: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> GasPipeDropResult:
        """Pressure lost by friction and fittings and gained or lost by height in a gas pipe, as a band where the flow is in transition, and the pressure left at its end."""

gas_pipe_drop: GasPipeDrop

@type_check_only
class GasPipeDischargeResult(Record):
    @property
    def gas_flow_low(self) -> Value:
        """Flow at reference conditions that is certain: the one to reckon with. [m³/h, at reference conditions]"""
    @property
    def gas_flow_high(self) -> Value:
        """Greatest flow at reference conditions, if the flow stayed laminar. [m³/h, at reference conditions]"""
    @property
    def heat_input_gross(self) -> Value:
        """Heat input that the certain flow feeds, gross, with the calorific value of the fuel. [kW, gross]"""
    @property
    def velocity(self) -> Value:
        """Velocity at the inlet with the certain flow. [m/s]"""
    @property
    def reynolds_number_low(self) -> Value:
        """Reynolds number of the certain flow. [number]"""
    @property
    def reynolds_number_high(self) -> Value:
        """Reynolds number of the greatest flow. [number]"""
    @property
    def friction_drop(self) -> Value:
        """Friction drop that is used, the height gain added to what is allowed. [Pa]"""
    @property
    def flow_by_pole(self) -> Value:
        """Flow by Pole's old formula, for comparison only: it promises too much in small pipes. [m³/h, at reference conditions]"""

@type_check_only
class GasPipeDischarge(Calculation[GasPipeDischargeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        allowed_drop: _Quantity,
        length: _Quantity,
        inlet_pressure: _Quantity,
        fuel: str | Mapping[str, Any] | None = ...,
        reference: str | None = ...,
        friction: Literal["Colebrook", "Haaland", "Swamee-Jain"] | None = ...,
        tube: str | None = ...,
        fittings: str | Mapping[str, Any] | Sequence[Mapping[str, Any]] | None = ...,
        equivalent_length: _Quantity | None = ...,
        loss_coefficient: _Number | None = ...,
        rise: _Quantity | None = ...,
        bore: _Quantity | None = ...,
        roughness: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        gas_density: _Quantity | None = ...,
        gas_viscosity: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> GasPipeDischargeResult:
        """Flow of gas that a pipe passes for an allowed pressure drop, as a band where the flow is in transition."""

gas_pipe_discharge: GasPipeDischarge

@type_check_only
class GasInstallationResult(Record):
    @property
    def gas_flow(self) -> Value:
        """Flow at reference conditions through the meter. [m³/h, at reference conditions]"""
    @property
    def heat_input_gross(self) -> Value:
        """Heat input drawn, gross. [kW, gross]"""
    @property
    def greatest_drop(self) -> Value:
        """Greatest drop from the meter to an appliance: the one to reckon with. [Pa]"""
    @property
    def lowest_appliance_pressure_low(self) -> Value:
        """Least gauge pressure at an appliance: the one to reckon with. [mbar, gauge]"""
    @property
    def lowest_appliance_pressure_high(self) -> Value:
        """The same if all flow in transition stayed laminar. [mbar, gauge]"""
    @property
    def greatest_velocity(self) -> Value:
        """Greatest velocity. [m/s]"""
    @property
    def sections_in_transition(self) -> Value:
        """Sections in which the flow is neither laminar nor turbulent. [number]"""
    @property
    def pipe_volume(self) -> Value:
        """Gas held by the pipes, fittings counted by their equivalent length. [L]"""

@type_check_only
class GasInstallation(Calculation[GasInstallationResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        sections: str | Mapping[str, Any] | Sequence[Mapping[str, Any]],
        inlet_pressure: _Quantity,
        fuel: str | Mapping[str, Any] | None = ...,
        reference: str | None = ...,
        friction: Literal["Colebrook", "Haaland", "Swamee-Jain"] | None = ...,
        load_factor: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> GasInstallationResult:
        """Flow, velocity, drop and pressure in every section of a branched installation, and the pressure at the worst-off appliance."""

gas_installation: GasInstallation

@type_check_only
class GasPipeSizingResult(Record):
    @property
    def pipe_volume(self) -> Value:
        """Gas held by the pipes, the least that will do. [L]"""
    @property
    def greatest_drop(self) -> Value:
        """Greatest drop from the meter to an appliance. [Pa]"""
    @property
    def spare_drop(self) -> Value:
        """Drop left over. [Pa]"""
    @property
    def lowest_appliance_pressure(self) -> Value:
        """Least gauge pressure at an appliance. [mbar, gauge]"""
    @property
    def greatest_velocity(self) -> Value:
        """Greatest velocity. [m/s]"""
    @property
    def widest_bore(self) -> Value:
        """Widest bore chosen. [mm]"""

@type_check_only
class GasPipeSizing(Calculation[GasPipeSizingResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        tubes: str | Mapping[str, Any] | Sequence[Mapping[str, Any]],
        allowed_drop: _Quantity,
        inlet_pressure: _Quantity,
        fuel: str | Mapping[str, Any] | None = ...,
        reference: str | None = ...,
        friction: Literal["Colebrook", "Haaland", "Swamee-Jain"] | None = ...,
        sections: str | Mapping[str, Any] | Sequence[Mapping[str, Any]] | None = ...,
        velocity_limit: _Quantity | None = ...,
        load_factor: _Quantity | None = ...,
        gas_temperature: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> GasPipeSizingResult:
        """The tube for each section of a branched installation so that no appliance loses more than the allowed drop, no section flows too fast or widens away from the meter, and the pipes hold the least gas."""

gas_pipe_sizing: GasPipeSizing

@type_check_only
class AbsolutePressureResult(Record):
    @property
    def absolute_pressure(self) -> Value:
        """Pressure above vacuum: what gas laws need. [mbar, absolute]"""

@type_check_only
class AbsolutePressure(Calculation[AbsolutePressureResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        gauge_pressure: _Quantity,
        barometric_pressure: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> AbsolutePressureResult:
        """The pressure above vacuum of what a gauge shows, from the pressure of the atmosphere."""

absolute_pressure: AbsolutePressure

@type_check_only
class AnalyserReadingResult(Record):
    @property
    def accuracy(self) -> Value:
        """Half-width of the stated accuracy at this reading. [ppm]"""
    @property
    def standard_uncertainty(self) -> Value:
        """Standard uncertainty: accuracy and resolution, both as rectangular distributions. [ppm]"""
    @property
    def relative_uncertainty(self) -> Value:
        """The same as a share of the reading. [%]"""
    @property
    def share_of_range(self) -> Value:
        """How far the reading stands in the measuring range. [%]"""
    @property
    def zero_error(self) -> Value:
        """Zero error in clean air. [ppm]"""

@type_check_only
class AnalyserReading(Calculation[AnalyserReadingResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        reading: _Quantity,
        range_high: _Quantity,
        range_low: _Quantity | None = ...,
        resolution: _Quantity | None = ...,
        accuracy_absolute: _Quantity | None = ...,
        accuracy_relative: _Quantity | None = ...,
        clean_air_reading: _Quantity | None = ...,
        clean_air_value: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> AnalyserReadingResult:
        """Whether a reading lies in the measuring range of the cell, and the uncertainty that the data sheet's accuracy and resolution give it."""

analyser_reading: AnalyserReading

@type_check_only
class FlameSupervisionVoltageResult(Record):
    @property
    def holding_ratio(self) -> Value:
        """Loaded voltage over the voltage at which the magnet lets go. [number]"""
    @property
    def holding_margin(self) -> Value:
        """Loaded voltage less the voltage at which the magnet lets go. [mV]"""
    @property
    def loss_under_load(self) -> Value:
        """Share of the open-circuit voltage that is lost when the magnet is connected. [%]"""
    @property
    def closing_time(self) -> Value:
        """Time from putting the pilot out to the valve closing, as read. [s]"""

@type_check_only
class FlameSupervisionVoltage(Calculation[FlameSupervisionVoltageResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        loaded_voltage: _Quantity,
        open_circuit_voltage: _Quantity | None = ...,
        drop_out_voltage: _Quantity | None = ...,
        closing_time: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FlameSupervisionVoltageResult:
        """Margin of the thermocouple's voltage over what the electromagnet needs. Plain readings: what is enough is for the maker's instructions and the policy they are judged against."""

flame_supervision_voltage: FlameSupervisionVoltage

@type_check_only
class InclinedGaugeResult(Record):
    @property
    def level_difference(self) -> Value:
        """Height of the column. [mm, both-limbs]"""
    @property
    def pressure(self) -> Value:
        """Pressure above the atmosphere; negative for a draught. [Pa, gauge]"""

@type_check_only
class InclinedGauge(Calculation[InclinedGaugeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        length: _Quantity,
        angle: _Quantity,
        relative_density: _Number | None = ...,
        gravity: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> InclinedGaugeResult:
        """Small gauge pressure or draught from the movement along an inclined tube. The level in the cistern is taken as fixed."""

inclined_gauge: InclinedGauge

@type_check_only
class LiquidColumnResult(Record):
    @property
    def level_difference(self) -> Value:
        """Level difference that balances the pressure. [mm, both-limbs]"""
    @property
    def liquid_density(self) -> Value:
        """Density of the liquid at its temperature. [kg/m³]"""
    @property
    def pressure(self) -> Value:
        """Pressure above the atmosphere by the weight of the liquid alone, with its true density and local gravity. [mbar, gauge]"""
    @property
    def pressure_less_air(self) -> Value:
        """The same less the weight of the air that stands in the place of the liquid in the other limb. [mbar, gauge]"""
    @property
    def pressure_conventional(self) -> Value:
        """What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity. [mbar, gauge]"""
    @property
    def convention_error(self) -> Value:
        """Share by which the conventional figure is too high. [%]"""

@type_check_only
class LiquidColumn(Calculation[LiquidColumnResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        level_difference: _Quantity,
        liquid: Literal["water", "stated"] | None = ...,
        density: _Quantity | None = ...,
        density_temperature: _Quantity | None = ...,
        expansion_coefficient: _Quantity | None = ...,
        liquid_temperature: _Quantity | None = ...,
        gravity: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> LiquidColumnResult:
        """Gauge pressure from the level difference of a U-gauge or a scale that gives it, with the true density of the liquid and local gravity, beside the figure in conventional units of water column."""

liquid_column: LiquidColumn

@type_check_only
class LocalGravityResult(Record):
    @property
    def gravity(self) -> Value:
        """Acceleration of gravity. [m/s²]"""
    @property
    def excess_over_standard(self) -> Value:
        """Share by which it exceeds standard gravity, 9.80665 m/s². [%]"""

@type_check_only
class LocalGravity(Calculation[LocalGravityResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        latitude: _Quantity,
        height: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> LocalGravityResult:
        """Acceleration of gravity at a latitude and height, for a liquid-column gauge read exactly."""

local_gravity: LocalGravity

@type_check_only
class PlatinumResistanceResult(Record):
    @property
    def resistance(self) -> Value:
        """Resistance of the element. [Ω]"""
    @property
    def resistance_with_leads(self) -> Value:
        """Resistance at the meter, through the leads. [Ω]"""
    @property
    def indicated_temperature(self) -> Value:
        """Temperature that a two-wire meter without correction shows. [°C]"""
    @property
    def lead_error(self) -> Value:
        """By how much that is too high. [K]"""
    @property
    def tolerance(self) -> Value:
        """Half-width of the tolerance of the class at this temperature. [K]"""
    @property
    def lowest_resistance(self) -> Value:
        """Lowest resistance at the meter within the tolerance. [Ω]"""
    @property
    def highest_resistance(self) -> Value:
        """Highest resistance at the meter within the tolerance. [Ω]"""
    @property
    def sensitivity(self) -> Value:
        """Relative change of the resistance with temperature, referred to 0 °C. [%/K]"""

@type_check_only
class PlatinumResistance(Calculation[PlatinumResistanceResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        temperature: _Quantity,
        resistance_at_zero: _Quantity,
        class_: Literal["none", "AA", "A", "B", "C"] | None = ...,
        construction: Literal["wire", "film"] | None = ...,
        lead_resistance: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> PlatinumResistanceResult:
        """Resistance to expect of a platinum element at a temperature, the band its class allows, and what two-wire leads do to the reading."""

platinum_resistance: PlatinumResistance

@type_check_only
class PlatinumTemperatureResult(Record):
    @property
    def temperature(self) -> Value:
        """Temperature of the element, the leads allowed for. [°C]"""
    @property
    def indicated_temperature(self) -> Value:
        """Temperature that the resistance at the meter indicates if the leads are forgotten. [°C]"""
    @property
    def lead_error(self) -> Value:
        """By how much the indicated temperature is too high. [K]"""
    @property
    def sensitivity(self) -> Value:
        """Relative change of the resistance with temperature, referred to 0 °C. [%/K]"""
    @property
    def tolerance(self) -> Value:
        """Half-width of the tolerance of the class at this temperature. [K]"""

@type_check_only
class PlatinumTemperature(Calculation[PlatinumTemperatureResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        resistance: _Quantity,
        resistance_at_zero: _Quantity,
        class_: Literal["none", "AA", "A", "B", "C"] | None = ...,
        construction: Literal["wire", "film"] | None = ...,
        lead_resistance: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> PlatinumTemperatureResult:
        """Temperature from the resistance of a Pt100, Pt1000 or other platinum element, with the error of two-wire leads and the tolerance of a class."""

platinum_temperature: PlatinumTemperature

@type_check_only
class ThermistorBetaResult(Record):
    @property
    def temperature(self) -> Value:
        """Temperature of the thermistor. [°C]"""
    @property
    def sensitivity(self) -> Value:
        """Relative change of the resistance with temperature there. [%/K]"""

@type_check_only
class ThermistorBeta(Calculation[ThermistorBetaResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        resistance: _Quantity,
        reference_resistance: _Quantity,
        beta: _Quantity,
        reference_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ThermistorBetaResult:
        """Temperature from the resistance, the resistance at a reference temperature and Beta. The constants are inputs, so their tolerances propagate."""

thermistor_beta: ThermistorBeta

@type_check_only
class ThermistorBetaOfPointsResult(Record):
    @property
    def beta(self) -> Value:
        """Beta of the thermistor between the two temperatures. [K]"""

@type_check_only
class ThermistorBetaOfPoints(Calculation[ThermistorBetaOfPointsResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        first_resistance: _Quantity,
        first_temperature: _Quantity,
        second_resistance: _Quantity,
        second_temperature: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> ThermistorBetaOfPointsResult:
        """Beta between two points of resistance and temperature, of a data sheet or measured."""

thermistor_beta_of_points: ThermistorBetaOfPoints

@type_check_only
class ThermistorTemperatureResult(Record):
    @property
    def temperature(self) -> Value:
        """Temperature of the thermistor. [°C]"""
    @property
    def sensitivity(self) -> Value:
        """Relative change of the resistance with temperature there. [%/K]"""

@type_check_only
class ThermistorTemperature(Calculation[ThermistorTemperatureResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        curve: Literal["beta", "steinhart_hart", "four_term", "points"],
        resistance: _Quantity,
        reference_resistance: _Quantity | None = ...,
        reference_temperature: _Quantity | None = ...,
        beta: _Quantity | None = ...,
        coefficients: Sequence[_Quantity] | Sequence[float] | None = ...,
        resistances: Sequence[_Quantity] | Sequence[float] | None = ...,
        temperatures: Sequence[_Quantity] | Sequence[float] | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ThermistorTemperatureResult:
        """Temperature from the resistance of an NTC thermistor by Beta, by three or four coefficients, or by a curve through points."""

thermistor_temperature: ThermistorTemperature

@type_check_only
class ThermistorCheckResult(Record):
    @property
    def resistance(self) -> Value:
        """Resistance of a nominal thermistor. [Ω]"""
    @property
    def lowest_resistance(self) -> Value:
        """Lowest resistance of a sound one, all tolerances at their worst together. [Ω]"""
    @property
    def highest_resistance(self) -> Value:
        """Highest resistance of a sound one, all tolerances at their worst together. [Ω]"""
    @property
    def sensitivity(self) -> Value:
        """Relative change of the resistance with temperature. [%/K]"""
    @property
    def indicated_temperature(self) -> Value:
        """Temperature that the control reads from the measured resistance. [°C]"""
    @property
    def deviation(self) -> Value:
        """By how much that is above the true temperature. [K]"""

@type_check_only
class ThermistorCheck(Calculation[ThermistorCheckResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        curve: Literal["beta", "steinhart_hart", "four_term", "points"],
        temperature: _Quantity,
        reference_resistance: _Quantity | None = ...,
        beta: _Quantity | None = ...,
        coefficients: Sequence[_Quantity] | Sequence[float] | None = ...,
        resistances: Sequence[_Quantity] | Sequence[float] | None = ...,
        temperatures: Sequence[_Quantity] | Sequence[float] | None = ...,
        temperature_tolerance: _Quantity | None = ...,
        resistance_tolerance: _Quantity | None = ...,
        beta_tolerance: _Quantity | None = ...,
        reference_temperature: _Quantity | None = ...,
        measured_resistance: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ThermistorCheckResult:
        """Resistance to expect of an NTC thermistor at a temperature and the band its tolerances allow, with a table from -20 to 110 °C to check against, and what a measured resistance would make the control believe."""

thermistor_check: ThermistorCheck

@type_check_only
class ThermistorFitResult(Record):
    @property
    def coefficient_a(self) -> Value:
        """Coefficient A. [1/K]"""
    @property
    def coefficient_b(self) -> Value:
        """Coefficient B, of ln R. [1/K]"""
    @property
    def coefficient_c(self) -> Value:
        """Coefficient C, of (ln R)³. [1/K]"""
    @property
    def temperature(self) -> Value:
        """Temperature for the resistance asked. [°C]"""

@type_check_only
class ThermistorFit(Calculation[ThermistorFitResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        first_resistance: _Quantity,
        first_temperature: _Quantity,
        second_resistance: _Quantity,
        second_temperature: _Quantity,
        third_resistance: _Quantity,
        third_temperature: _Quantity,
        resistance: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ThermistorFitResult:
        """The three-term curve through three points of resistance and temperature, and the temperature it gives for another resistance."""

thermistor_fit: ThermistorFit

@type_check_only
class ThermocoupleTemperatureResult(Record):
    @property
    def reference_junction_emf(self) -> Value:
        """EMF of the reference junction, which is added to the voltage. [mV]"""
    @property
    def emf(self) -> Value:
        """EMF of the measuring junction, referred to 0 °C. [mV]"""
    @property
    def temperature(self) -> Value:
        """Temperature of the measuring junction. [°C]"""
    @property
    def seebeck_coefficient(self) -> Value:
        """Seebeck coefficient there. [µV/K]"""
    @property
    def addition_error(self) -> Value:
        """Error made by whoever looks the voltage up in the table and adds the temperature of the reference junction. [K]"""
    @property
    def tolerance(self) -> Value:
        """Half-width of the tolerance of the class at this temperature. [K]"""

@type_check_only
class ThermocoupleTemperature(Calculation[ThermocoupleTemperatureResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        voltage: _Quantity,
        reference_junction_temperature: _Quantity,
        type: Literal["K", "J", "T", "N", "S", "R", "B", "E"] | None = ...,
        class_: Literal["none", "1", "2", "3"] | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ThermocoupleTemperatureResult:
        """Temperature of the measuring junction from the voltage at the meter and the temperature of the reference junction, whose EMF is added."""

thermocouple_temperature: ThermocoupleTemperature

@type_check_only
class ThermocoupleVoltageResult(Record):
    @property
    def voltage(self) -> Value:
        """Voltage at the meter. [mV]"""
    @property
    def emf(self) -> Value:
        """EMF of the measuring junction, referred to 0 °C. [mV]"""
    @property
    def reference_junction_emf(self) -> Value:
        """EMF of the reference junction, which is taken off it. [mV]"""
    @property
    def seebeck_coefficient(self) -> Value:
        """Seebeck coefficient at the measuring junction. [µV/K]"""
    @property
    def tolerance(self) -> Value:
        """Half-width of the tolerance of the class at this temperature. [K]"""

@type_check_only
class ThermocoupleVoltage(Calculation[ThermocoupleVoltageResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        temperature: _Quantity,
        type: Literal["K", "J", "T", "N", "S", "R", "B", "E"] | None = ...,
        class_: Literal["none", "1", "2", "3"] | None = ...,
        reference_junction_temperature: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ThermocoupleVoltageResult:
        """Voltage to expect at the meter for the temperatures of both junctions."""

thermocouple_voltage: ThermocoupleVoltage

@type_check_only
class ThermostatDifferentialResult(Record):
    @property
    def differential(self) -> Value:
        """Difference of the two operating values. [K]"""
    @property
    def mid_point(self) -> Value:
        """Middle between them. [°C]"""

@type_check_only
class ThermostatDifferential(Calculation[ThermostatDifferentialResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        cut_out_temperature: _Quantity,
        cut_in_temperature: _Quantity,
        outputs: Sequence[str] | None = ...,
    ) -> ThermostatDifferentialResult:
        """Differential and mid-point from the temperature at which a thermostat opens and the one at which it closes again."""

thermostat_differential: ThermostatDifferential

@type_check_only
class ThermostatTestResult(Record):
    @property
    def cut_out(self) -> Value:
        """Mean operating value on rising temperature: the burner stops. [°C]"""
    @property
    def cut_in(self) -> Value:
        """Mean operating value on falling temperature: the burner lights again. [°C]"""
    @property
    def differential(self) -> Value:
        """Differential: cut-out less cut-in, a difference and not a temperature. [K]"""
    @property
    def mid_point(self) -> Value:
        """Middle between cut-out and cut-in. [°C]"""
    @property
    def offset(self) -> Value:
        """Cut-out less set point. [K]"""
    @property
    def cut_out_repeatability(self) -> Value:
        """Repeatability of the cut-out: experimental standard deviation of one reading. [K]"""
    @property
    def cut_in_repeatability(self) -> Value:
        """Repeatability of the cut-in. [K]"""
    @property
    def cut_out_uncertainty(self) -> Value:
        """Standard uncertainty of the mean cut-out, type A. [K]"""
    @property
    def cut_in_uncertainty(self) -> Value:
        """Standard uncertainty of the mean cut-in, type A. [K]"""
    @property
    def cut_out_spread(self) -> Value:
        """Highest less lowest cut-out. [K]"""
    @property
    def cut_in_spread(self) -> Value:
        """Highest less lowest cut-in. [K]"""
    @property
    def cut_out_drift(self) -> Value:
        """Drift of the cut-out from one cycle to the next, from a straight line through the readings in their order. [K]"""
    @property
    def cut_in_drift(self) -> Value:
        """Drift of the cut-in from one cycle to the next. [K]"""
    @property
    def cut_out_drift_uncertainty(self) -> Value:
        """Standard uncertainty of the drift of the cut-out per cycle. [K]"""

@type_check_only
class ThermostatTest(Calculation[ThermostatTestResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        cut_outs: Sequence[_Quantity] | Sequence[float],
        cut_ins: Sequence[_Quantity] | Sequence[float] | None = ...,
        set_point: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ThermostatTestResult:
        """Cut-out, cut-in, differential, repeatability and drift of a control thermostat from repeated readings. Not for judging a limit thermostat."""

thermostat_test: ThermostatTest

@type_check_only
class UGaugeResult(Record):
    @property
    def level_difference(self) -> Value:
        """Level difference that balances the pressure. [mm, both-limbs]"""
    @property
    def liquid_density(self) -> Value:
        """Density of the liquid at its temperature. [kg/m³]"""
    @property
    def pressure(self) -> Value:
        """Pressure above the atmosphere by the weight of the liquid alone, with its true density and local gravity. [mbar, gauge]"""
    @property
    def pressure_less_air(self) -> Value:
        """The same less the weight of the air that stands in the place of the liquid in the other limb. [mbar, gauge]"""
    @property
    def pressure_conventional(self) -> Value:
        """What the same reading is in conventional units of water column: 1000 kg/m³ and standard gravity. [mbar, gauge]"""
    @property
    def convention_error(self) -> Value:
        """Share by which the conventional figure is too high. [%]"""

@type_check_only
class UGauge(Calculation[UGaugeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        limb_down: _Quantity,
        limb_up: _Quantity,
        liquid: Literal["water", "stated"] | None = ...,
        density: _Quantity | None = ...,
        density_temperature: _Quantity | None = ...,
        expansion_coefficient: _Quantity | None = ...,
        liquid_temperature: _Quantity | None = ...,
        gravity: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> UGaugeResult:
        """Gauge pressure from how far the liquid fell in one limb and rose in the other. Both are asked for, since one alone is half the pressure."""

u_gauge: UGauge

@type_check_only
class VentFreeAreaResult(Record):
    @property
    def overall_area(self) -> Value:
        """Overall area, which says nothing of the air that passes. [mm², overall]"""
    @property
    def free_area(self) -> Value:
        """Free area: the sum of the openings. [mm², free]"""
    @property
    def free_share(self) -> Value:
        """Free over overall area. [%]"""

@type_check_only
class VentFreeArea(Calculation[VentFreeAreaResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        width: _Quantity,
        height: _Quantity,
        opening_count: _Number | None = ...,
        opening_width: _Quantity | None = ...,
        opening_height: _Quantity | None = ...,
        free_share: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> VentFreeAreaResult:
        """Free area of a ventilator from its openings or from its maker's share, kept apart from its overall area."""

vent_free_area: VentFreeArea

@type_check_only
class OpeningFlowResult(Record):
    @property
    def air_flow(self) -> Value:
        """Flow of air. [m³/h]"""
    @property
    def equivalent_area(self) -> Value:
        """Equivalent area. [mm², equivalent]"""
    @property
    def mean_velocity(self) -> Value:
        """Mean velocity over the free area. [m/s]"""

@type_check_only
class OpeningFlow(Calculation[OpeningFlowResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        free_area: _Quantity,
        pressure_difference: _Quantity,
        discharge_coefficient: _Number | None = ...,
        sharp_edge_coefficient: _Number | None = ...,
        air_density: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> OpeningFlowResult:
        """Air that passes an opening of a free area at a pressure difference, and its equivalent area."""

opening_flow: OpeningFlow

@type_check_only
class OpeningSizeResult(Record):
    @property
    def free_area(self) -> Value:
        """Free area needed. [mm², free]"""
    @property
    def equivalent_area(self) -> Value:
        """Equivalent area needed. [mm², equivalent]"""

@type_check_only
class OpeningSize(Calculation[OpeningSizeResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        air_flow: _Quantity,
        pressure_difference: _Quantity,
        discharge_coefficient: _Number | None = ...,
        sharp_edge_coefficient: _Number | None = ...,
        air_density: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> OpeningSizeResult:
        """Free and equivalent area that pass a flow of air at a pressure difference."""

opening_size: OpeningSize

@type_check_only
class VentilationNeedResult(Record):
    @property
    def rating_above_threshold(self) -> Value:
        """Rating on the basis of the rule, above the threshold. [kW]"""
    @property
    def free_area(self) -> Value:
        """Free area of each opening asked for. [mm², free]"""
    @property
    def equivalent_area(self) -> Value:
        """Equivalent area of each opening asked for. [mm², equivalent]"""
    @property
    def room_volume(self) -> Value:
        """Room volume asked for. [m³]"""
    @property
    def air_flow(self) -> Value:
        """Air flow asked for. [m³/h]"""

@type_check_only
class VentilationNeed(Calculation[VentilationNeedResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        rating_basis: Literal["heat_input_net", "heat_input_gross", "heat_output"],
        area_kind: Literal["free", "equivalent"] | None = ...,
        heat_input_net: _Quantity | None = ...,
        heat_input_gross: _Quantity | None = ...,
        heat_output: _Quantity | None = ...,
        threshold: _Quantity | None = ...,
        area_rate: _Quantity | None = ...,
        minimum_area: _Quantity | None = ...,
        room_volume_rate: _Quantity | None = ...,
        air_flow_rate: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> VentilationNeedResult:
        """Opening, room volume or air flow that a building rule of the caller's asks for, on the rating basis the rule counts. No rule is built in."""

ventilation_need: VentilationNeed

@type_check_only
class RoomConcentrationResult(Record):
    @property
    def concentration(self) -> Value:
        """Share of the gas in the room after the time. [ppm, wet]"""
    @property
    def steady(self) -> Value:
        """Share of the gas in the room after a very long time. [ppm, wet]"""
    @property
    def time_constant(self) -> Value:
        """Time in which the way to the steady share shrinks to 37 %. [h]"""
    @property
    def completion(self) -> Value:
        """Share of the way to the steady share made after the time. [%]"""
    @property
    def mean(self) -> Value:
        """Mean share over the time. [ppm, wet]"""
    @property
    def time_to_level(self) -> Value:
        """Time at which the level asked for is met. [h]"""

@type_check_only
class RoomConcentration(Calculation[RoomConcentrationResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        room_volume: _Quantity,
        air_change_rate: _Quantity,
        elapsed_time: _Quantity,
        source: _Quantity | None = ...,
        background: _Quantity | None = ...,
        initial: _Quantity | None = ...,
        level: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> RoomConcentrationResult:
        """Build-up and clearing of carbon monoxide, carbon dioxide or any gas in a well-mixed room with a steady source and air change."""

room_concentration: RoomConcentration

@type_check_only
class NaturalDraughtResult(Record):
    @property
    def air_density(self) -> Value:
        """Density of the outdoor air. [kg/m³]"""
    @property
    def flue_density(self) -> Value:
        """Mean density of the gas in the flue. [kg/m³]"""
    @property
    def draught(self) -> Value:
        """Draught at rest. [Pa]"""
    @property
    def net_draught(self) -> Value:
        """Draught left after the pressure loss. [Pa]"""
    @property
    def reversal_flue_temperature(self) -> Value:
        """Mean flue temperature at which the draught at rest turns. [°C]"""
    @property
    def reversal_outdoor_temperature(self) -> Value:
        """Outdoor temperature at which the net draught turns; warmer outdoors it pushes down. [°C]"""

@type_check_only
class NaturalDraught(Calculation[NaturalDraughtResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        height: _Quantity,
        outdoor_temperature: _Quantity,
        mean_flue_temperature: _Quantity,
        barometric_pressure: _Quantity | None = ...,
        air_gas_constant: _Quantity | None = ...,
        flue_gas_constant: _Quantity | None = ...,
        pressure_loss: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> NaturalDraughtResult:
        """Draught from height, mean flue temperature, outdoor temperature and barometer, what is left after losses, and the temperatures at which it turns."""

natural_draught: NaturalDraught

@type_check_only
class FlueFlowResult(Record):
    @property
    def flue_density(self) -> Value:
        """Density of the flue gas. [kg/m³]"""
    @property
    def velocity(self) -> Value:
        """Velocity. [m/s]"""
    @property
    def mass_flow(self) -> Value:
        """Mass flow. [kg/s]"""
    @property
    def reynolds_number(self) -> Value:
        """Reynolds number. [number]"""
    @property
    def friction_factor(self) -> Value:
        """Friction factor (Darcy) used. [number]"""
    @property
    def pressure_loss(self) -> Value:
        """Pressure lost by friction and at the fittings. [Pa]"""

@type_check_only
class FlueFlow(Calculation[FlueFlowResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        mean_flue_temperature: _Quantity,
        bore: _Quantity,
        length: _Quantity,
        velocity: _Quantity | None = ...,
        mass_flow: _Quantity | None = ...,
        flue_gas_constant: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        friction_factor: _Number | None = ...,
        roughness: _Quantity | None = ...,
        loss_coefficient: _Number | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FlueFlowResult:
        """Mass flow, velocity and pressure lost by friction and fittings in a flue at a mean temperature."""

flue_flow: FlueFlow

@type_check_only
class ChimneyDraughtResult(Record):
    @property
    def internal_coefficient(self) -> Value:
        """Internal coefficient of heat transfer. [W/(m²·K)]"""
    @property
    def transmission_coefficient(self) -> Value:
        """Coefficient of heat transmission on the inner surface. [W/(m²·K)]"""
    @property
    def cooling_number(self) -> Value:
        """Cooling number. [number]"""
    @property
    def mean_flue_temperature(self) -> Value:
        """Mean temperature of the flue gas. [°C]"""
    @property
    def outlet_temperature(self) -> Value:
        """Temperature of the flue gas at the outlet. [°C]"""
    @property
    def outlet_wall_temperature(self) -> Value:
        """Temperature of the inner wall at the outlet, the wall settled. [°C]"""
    @property
    def flue_density(self) -> Value:
        """Mean density of the flue gas. [kg/m³]"""
    @property
    def velocity(self) -> Value:
        """Mean velocity of the flue gas. [m/s]"""
    @property
    def reynolds_number(self) -> Value:
        """Reynolds number. [number]"""
    @property
    def draught(self) -> Value:
        """Draught at rest. [Pa]"""
    @property
    def pressure_loss(self) -> Value:
        """Loss of the flue with its safety factor. [Pa]"""
    @property
    def net_draught(self) -> Value:
        """Draught at the inlet of the chimney. [Pa]"""
    @property
    def spare_draught(self) -> Value:
        """Draught left over what is needed. [Pa]"""
    @property
    def reversal_outdoor_temperature(self) -> Value:
        """Outdoor temperature at which nothing would be left over, this mean flue temperature kept. [°C]"""
    @property
    def dew_point(self) -> Value:
        """Dew point of the water vapour. [°C]"""
    @property
    def dew_point_margin(self) -> Value:
        """Inner wall at the outlet above the dew point; negative where it is wet. [K]"""
    @property
    def wet_from(self) -> Value:
        """Length from the inlet at which the wall begins to be wet. [m]"""

@type_check_only
class ChimneyDraught(Calculation[ChimneyDraughtResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        mass_flow: _Quantity,
        inlet_temperature: _Quantity,
        outdoor_temperature: _Quantity,
        height: _Quantity,
        bore: _Quantity,
        surrounding_temperature: _Quantity | None = ...,
        length: _Quantity | None = ...,
        outside_diameter: _Quantity | None = ...,
        thermal_resistance: _Quantity | None = ...,
        external_coefficient: _Quantity | None = ...,
        instability_factor: _Number | None = ...,
        roughness: _Quantity | None = ...,
        loss_coefficient: _Number | None = ...,
        flow_safety_factor: _Number | None = ...,
        draught_needed: _Quantity | None = ...,
        specific_heat_capacity: _Quantity | None = ...,
        flue_gas_constant: _Quantity | None = ...,
        air_gas_constant: _Quantity | None = ...,
        water_vapour: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> ChimneyDraughtResult:
        """Cooling of the flue gas with height, draught, loss and what is left, wall temperature at the outlet and whether and where the wall is wet."""

chimney_draught: ChimneyDraught

@type_check_only
class FlueGasFlowResult(Record):
    @property
    def mass_flow(self) -> Value:
        """Mass flow. [kg/s]"""
    @property
    def volume_flow(self) -> Value:
        """Volume flow at the flue temperature and the barometer. [m³/h]"""
    @property
    def flue_gas_constant(self) -> Value:
        """Specific gas constant. [J/(kg·K)]"""
    @property
    def specific_heat_capacity(self) -> Value:
        """Specific heat capacity at constant pressure. [J/(kg·K)]"""
    @property
    def water_vapour(self) -> Value:
        """Share of water vapour. [%, wet]"""
    @property
    def dew_point(self) -> Value:
        """Dew point of that vapour. [°C]"""

@type_check_only
class FlueGasFlow(Calculation[FlueGasFlowResult]):
    def __call__(  # type: ignore[override]
        self,
        *,
        fuel: str | Mapping[str, Any],
        heat_input_net: _Quantity,
        excess_air_ratio: _Number,
        air: Literal["standard", "21/79"] | None = ...,
        flue_temperature: _Quantity | None = ...,
        air_temperature: _Quantity | None = ...,
        air_relative_humidity: _Quantity | None = ...,
        barometric_pressure: _Quantity | None = ...,
        outputs: Sequence[str] | None = ...,
    ) -> FlueGasFlowResult:
        """Mass and volume flow, gas constant, heat capacity, water vapour and dew point of the flue gas that a burner and its dilution air send up the flue."""

flue_gas_flow: FlueGasFlow
