//! `expansion_vessel` and `vessel_check`: sizing a sealed system's vessel, and what one does as found.

use super::{GRAVITY, PRESSURE_CAUTION};
use crate::Error;
use crate::calculation::{Calculation, Context, Info, Raised, Rule, Setting, Settings, Source};
use crate::quantity::types::{Acceleration, Length, MassDensity, Pressure, Ratio, ThermodynamicTemperature, Volume};
use crate::quantity::units::{BAR, LITRE, PERCENT};
use crate::quantity::{AbsolutePressure, GaugePressure, Value};
use crate::record::record;
use crate::water::{FLUID_SETTING, Fluid, saturation_pressure};
use crate::working::{Working, step};

/// Absolute pressure at which densities are taken, Pa: amid those of a sealed system.
const PRESSURE: f64 = 2.5e5;
/// Density of cold water in kg/m³ for the static pressure: that of 10 °C, rounded.
const COLD_WATER: f64 = 999.7;

const SOURCES: &[Source] = &[
    Source::new(
        "EN 12828, annex on expansion vessels, from memory",
        "reserve of 0.5 % and at least 3 L, of a fifth of vessels up to 15 L; final pressure 0.5 bar (above 5 bar: a tenth) below the safety valve; vessel and fill pressure",
    ),
    Source::new("Boyle's law", "gas side of the vessel, taken as isothermal"),
    Source::new("IAPWS SR6-08(2011)", "density of water"),
    Source::new("Melinder, Properties of Secondary Working Fluids, IIR 2010", "density of glycol mixtures"),
    Source::new("common practice, no source", "0.3 bar above the static pressure and 0.7 bar as least pre-charge"),
];

/// Share by which the liquid grows from one temperature to another, of the cold volume.
fn expansion_share(fluid: Fluid, fraction: f64, cold: f64, hot: f64) -> f64 {
    fluid.state(fraction, PRESSURE, cold).density / fluid.state(fraction, PRESSURE, hot).density - 1.0
}

/// A sealed system.
#[record]
pub struct ExpansionVesselInput {
    /// Water content of the whole system.
    #[field("V", LITRE, 1.0..=1000000.0, usual = 20.0..=5000.0)]
    pub system_content: Volume,
    /// Temperature of the water when it is filled.
    #[field("t_{fill}", DEGREE_CELSIUS, -30.0..=60.0, default = 10.0, usual = 4.0..=25.0)]
    pub fill_temperature: ThermodynamicTemperature,
    /// Highest temperature the water may reach: what the limiter allows.
    #[field("t_{max}", DEGREE_CELSIUS, 10.0..=110.0, usual = 40.0..=110.0)]
    pub highest_temperature: ThermodynamicTemperature,
    /// Height of the system's top above the vessel.
    #[field("h_{st}", METRE, 0.0..=200.0, usual = 0.0..=40.0)]
    pub static_height: Length,
    /// Pressure to be kept at the top over that of the air.
    #[field("\\Delta p_0", BAR, 0.0..=2.0, default = 0.3, usual = 0.2..=0.5)]
    pub pressure_margin: Pressure,
    /// Least pre-charge whatever the height.
    #[field("p_{0,min}", BAR, 0.0..=3.0, default = 0.7)]
    pub least_pre_charge: GaugePressure,
    /// Set pressure of the safety valve.
    #[field("p_{SV}", BAR, 0.5..=16.0, default = 3.0, usual = 2.0..=6.0)]
    pub safety_valve_pressure: GaugePressure,
    /// Water reserve as a share of the content.
    #[field("w_R", PERCENT, 0.0..=20.0, default = 0.5)]
    pub reserve_share: Ratio,
    /// Least water reserve.
    #[field("V_{R,min}", LITRE, 0.0..=100.0, default = 3.0)]
    pub least_reserve: Volume,
    /// Pressure of the air; the standard counts it as 1 bar.
    #[field("p_{amb}", BAR, 0.6..=1.1, default = 1.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
    /// Expansion of the liquid, where it is taken from a table.
    #[field("e", PERCENT, 0.0..=20.0, absent = "from the densities of the liquid")]
    pub expansion_share: Ratio,
}

/// The vessel it needs.
#[record]
pub struct ExpansionVesselResult {
    /// Expansion of the liquid as a share of its cold volume.
    #[field("e", PERCENT)]
    pub expansion_share: Ratio,
    /// Expansion volume.
    #[field("V_e", LITRE)]
    pub expansion_volume: Volume,
    /// Water reserve.
    #[field("V_{WR}", LITRE)]
    pub water_reserve: Volume,
    /// Static pressure of the cold system at the vessel.
    #[field("p_{st}", BAR)]
    pub static_pressure: Pressure,
    /// Pre-charge of the vessel, without water in it.
    #[field("p_0", BAR)]
    pub pre_charge: GaugePressure,
    /// Pressure that the hot system may reach.
    #[field("p_e", BAR)]
    pub final_pressure: GaugePressure,
    /// Share of the vessel that water can take between pre-charge and final pressure.
    #[field("\\eta", ONE)]
    pub acceptance: Ratio,
    /// Least vessel, with the reserve by share of the content.
    #[field("V_{exp}", LITRE)]
    pub vessel_volume: Volume,
    /// Least vessel where a fifth of it is the reserve: the rule for vessels of up to 15 L.
    #[field("V_{exp,15}", LITRE, absent = "the pressures leave no room for a reserve of a fifth")]
    pub vessel_volume_with_fifth: Volume,
    /// Least vessel with no reserve at all, for comparison.
    #[field("V_{exp,0}", LITRE)]
    pub vessel_volume_without_reserve: Volume,
    /// Least pressure to which the cold system is filled, so that the reserve is in the vessel.
    #[field("p_a", BAR)]
    pub fill_pressure: GaugePressure,
}

/// Sizing of a sealed system's expansion vessel.
#[derive(Clone, Copy, Debug, Default)]
pub struct ExpansionVessel {
    /// What circulates.
    pub fluid: Fluid,
}

impl Context for ExpansionVessel {
    const SETTINGS: &'static [Setting] = &[FLUID_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { fluid: Fluid::from_settings(settings)? })
    }
}

mod sizing {
    crate::rules! {
        refuse NOT_HOTTER on "highest_temperature": "the highest temperature must lie above the filling temperature";
        refuse FROZEN on "fill_temperature": "the liquid would be frozen at this temperature";
        refuse GLYCOL_IN_WATER on "glycol_mass_fraction": "set `fluid` to the glycol that is in the water";
        refuse GLYCOL_TOO_HOT on "highest_temperature": "the glycol data end at 100 °C";
        refuse NO_ROOM on "safety_valve_pressure": "the pre-charge leaves no room below the safety valve: a higher valve setting or less height is needed";
        notice SMALL_VESSEL on "vessel_volume": "a vessel of up to 15 L keeps a fifth of itself as reserve: see vessel_volume_with_fifth";
        notice NEAR_BOILING on "highest_temperature": "at the pre-charge the water would boil at the top; raise the pressure or limit the temperature";
    }
    pub(super) const LIST: &[crate::calculation::Rule] = RULES;
    pub(super) const NUMBERS: [u32; 7] = [NOT_HOTTER, FROZEN, GLYCOL_IN_WATER, GLYCOL_TOO_HOT, NO_ROOM, SMALL_VESSEL, NEAR_BOILING];
}

impl Calculation for ExpansionVessel {
    type Input = ExpansionVesselInput;
    type Output = ExpansionVesselResult;
    const INFO: Info = Info {
        name: "expansion_vessel",
        title: "Expansion vessel",
        summary: "Expansion volume, water reserve, pre-charge, vessel size and fill pressure of a sealed heating system.",
        sources: SOURCES,
        accuracy: "Expansion of water 0.01 % of itself, of glycol 5 %; the content of the system is seldom known to 10 %: round the vessel up.",
        cautions: &[PRESSURE_CAUTION],
        checked_against: "heat/expansion_vessel.csv, heat/expansion_water.csv, heat/published_hydraulic_examples.csv (H05)",
    };
    const RULES: &'static [Rule] = sizing::LIST;

    #[inline]
    fn check(&self, input: &ExpansionVesselInput) -> Raised {
        let [not_hotter, frozen, glycol_in_water, glycol_too_hot, ..] = sizing::NUMBERS;
        let fraction = input.glycol_mass_fraction.si();
        let (cold, hot) = (input.fill_temperature.si(), input.highest_temperature.si());
        Raised::NONE
            .when(not_hotter, hot <= cold)
            .when(frozen, self.fluid.frozen(fraction, cold))
            .when(glycol_in_water, self.fluid.glycol_in_water(fraction))
            .when(glycol_too_hot, !matches!(self.fluid, Fluid::Water) & (hot > crate::water::HIGHEST_MIXTURE_TEMPERATURE))
    }

    #[inline]
    fn review(&self, input: &ExpansionVesselInput, output: &ExpansionVesselResult) -> Raised {
        let [.., no_room, small_vessel, near_boiling] = sizing::NUMBERS;
        let top = output.pre_charge.si() - output.static_pressure.si() + input.barometric_pressure.si();
        Raised::NONE
            .when(no_room, output.final_pressure.si() <= output.pre_charge.si())
            .when(small_vessel, output.vessel_volume.si() <= 0.015)
            .when(near_boiling, saturation_pressure(input.highest_temperature.si()) > top)
    }

    fn compute<W: Working>(&self, input: &ExpansionVesselInput, working: &mut W) -> ExpansionVesselResult {
        let fraction = input.glycol_mass_fraction.si();
        let (cold, hot) = (input.fill_temperature.si(), input.highest_temperature.si());
        let (filled, hottest) = (self.fluid.state(fraction, PRESSURE, cold).density, self.fluid.state(fraction, PRESSURE, hot).density);
        let head_density = match self.fluid {
            Fluid::Water => COLD_WATER + 0.0 * filled,
            Fluid::Glycol(_) => filled,
        };
        let expansion = if input.expansion_share.si().is_nan() {
            step!(working, let cold_density: "\\rho_1" = MassDensity::from_si(filled), "at filling temperature: IAPWS SR6-08, or Melinder 2010");
            step!(working, let hot_density: "\\rho_2" = MassDensity::from_si(hottest), "at the highest temperature, likewise");
            step!(working, let expansion: "e" in PERCENT = cold_density / hot_density - Ratio::from_si(1.0), "the mass stays the same");
            expansion
        } else {
            step!(working, let expansion: "e" in PERCENT = input.expansion_share, "as given");
            expansion
        };
        step!(working, let gravity: "g" = Acceleration::from_si(GRAVITY), "standard gravity, CGPM 1901");
        step!(working, let density: "\\rho_{st}" = MassDensity::from_si(head_density), "cold water rounded to that of 10 °C; a glycol mixture at filling temperature");
        step!(working, let expansion_volume: "V_e" in LITRE = expansion * input.system_content, "EN 12828");
        step!(working, let water_reserve: "V_{WR}" in LITRE = (input.reserve_share * input.system_content).max(input.least_reserve), "EN 12828");
        step!(working, let static_pressure: "p_{st}" in BAR = density * gravity * input.static_height, "hydrostatics, cold");
        step!(working, let pre_charge: "p_0" in BAR = (static_pressure + input.pressure_margin).max(input.least_pre_charge.plain()), "EN 12828");
        step!(working, let final_pressure: "p_e" in BAR = (input.safety_valve_pressure.plain() - Pressure::from_si(50_000.0)).min(0.9 * input.safety_valve_pressure.plain()), "EN 12828");
        step!(working, let acceptance: "\\eta" = (final_pressure - pre_charge) / (final_pressure + input.barometric_pressure.plain()), "Boyle's law");
        step!(working, let vessel_volume: "V_{exp}" in LITRE = (expansion_volume + water_reserve) / acceptance, "EN 12828");
        step!(working, let vessel_volume_without_reserve: "V_{exp,0}" in LITRE = expansion_volume / acceptance, "Boyle's law");
        step!(working, let fill_pressure: "p_a" in BAR = (pre_charge + input.barometric_pressure.plain()) * vessel_volume / (vessel_volume - water_reserve) - input.barometric_pressure.plain(), "EN 12828");
        // V = (V_e + V/5) / eta
        let with_fifth = expansion_volume.si() / (acceptance.si() - 0.2);
        ExpansionVesselResult {
            expansion_share: expansion,
            expansion_volume,
            water_reserve,
            static_pressure,
            pre_charge: GaugePressure::new(pre_charge),
            final_pressure: GaugePressure::new(final_pressure),
            acceptance,
            vessel_volume,
            vessel_volume_with_fifth: Volume::from_si(if with_fifth.is_finite() && with_fifth >= 0.0 { with_fifth } else { f64::NAN }),
            vessel_volume_without_reserve,
            fill_pressure: GaugePressure::new(fill_pressure),
        }
    }
}

/// A vessel as found on a system.
#[record]
pub struct VesselCheckInput {
    /// Nominal volume of the vessel.
    #[field("V_n", LITRE, 0.5..=100000.0, usual = 4.0..=1000.0)]
    pub vessel_volume: Volume,
    /// Pre-charge as measured with the water side relieved of pressure.
    #[field("p_0", BAR, 0.0..=10.0, usual = 0.5..=4.0)]
    pub pre_charge: GaugePressure,
    /// Pressure of the cold system as filled.
    #[field("p_a", BAR, 0.0..=10.0, usual = 0.8..=4.0)]
    pub fill_pressure: GaugePressure,
    /// Water content of the whole system.
    #[field("V", LITRE, 1.0..=1000000.0, usual = 20.0..=5000.0)]
    pub system_content: Volume,
    /// Temperature of the water at that pressure.
    #[field("t_{fill}", DEGREE_CELSIUS, -30.0..=60.0, default = 10.0, usual = 4.0..=25.0)]
    pub fill_temperature: ThermodynamicTemperature,
    /// Temperature to which the whole content is heated.
    #[field("t_{max}", DEGREE_CELSIUS, 10.0..=110.0, usual = 40.0..=110.0)]
    pub highest_temperature: ThermodynamicTemperature,
    /// Set pressure of the safety valve.
    #[field("p_{SV}", BAR, 0.5..=16.0, default = 3.0, usual = 2.0..=6.0)]
    pub safety_valve_pressure: GaugePressure,
    /// Pressure of the air.
    #[field("p_{amb}", BAR, 0.6..=1.1, default = 1.0)]
    pub barometric_pressure: AbsolutePressure,
    /// Share of glycol by mass; needs the setting `fluid`.
    #[field("w", PERCENT, 0.0..=60.0, default = 0.0)]
    pub glycol_mass_fraction: Ratio,
}

/// What it does.
#[record]
pub struct VesselCheckResult {
    /// Expansion volume of the content.
    #[field("V_e", LITRE)]
    pub expansion_volume: Volume,
    /// Gas in the vessel when cold.
    #[field("V_{g,a}", LITRE)]
    pub gas_volume_cold: Volume,
    /// Water in the vessel when cold: the reserve.
    #[field("V_{WR}", LITRE)]
    pub water_reserve: Volume,
    /// Most water the vessel takes up between cold and the pressure allowed when hot.
    #[field("V_{up}", LITRE)]
    pub take_up: Volume,
    /// Pressure of the hot system, if the safety valve did not lift.
    #[field("p_h", BAR, absent = "the vessel is full of water: the safety valve must lift")]
    pub hot_pressure: GaugePressure,
    /// Pressure that the hot system may reach.
    #[field("p_e", BAR)]
    pub final_pressure: GaugePressure,
    /// Water that leaves by the safety valve on heating up, and is missing when cold again.
    #[field("V_{lost}", LITRE)]
    pub water_lost: Volume,
}

/// Pressures of a system with a vessel as found: right, too small, or with its pre-charge lost.
#[derive(Clone, Copy, Debug, Default)]
pub struct VesselCheck {
    /// What circulates.
    pub fluid: Fluid,
}

impl Context for VesselCheck {
    const SETTINGS: &'static [Setting] = &[FLUID_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { fluid: Fluid::from_settings(settings)? })
    }
}

mod found {
    crate::rules! {
        refuse NOT_HOTTER on "highest_temperature": "the highest temperature must lie above the filling temperature";
        refuse FROZEN on "fill_temperature": "the liquid would be frozen at this temperature";
        refuse GLYCOL_IN_WATER on "glycol_mass_fraction": "set `fluid` to the glycol that is in the water";
        refuse GLYCOL_TOO_HOT on "highest_temperature": "the glycol data end at 100 °C";
        refuse FILLED_ABOVE_VALVE on "fill_pressure": "the cold pressure is above the safety valve's; check both readings";
        notice VALVE_LIFTS on "hot_pressure": "the safety valve lifts on heating up and the system will be low when cold: restore the pre-charge, or fit a larger vessel";
        notice ABOVE_FINAL on "hot_pressure": "the hot pressure comes too near the safety valve's, which may weep";
        notice NO_RESERVE on "fill_pressure": "the pre-charge is not below the cold pressure: no water is held in reserve, and the least loss lets air in";
    }
    pub(super) const LIST: &[crate::calculation::Rule] = RULES;
    pub(super) const NUMBERS: [u32; 8] =
        [NOT_HOTTER, FROZEN, GLYCOL_IN_WATER, GLYCOL_TOO_HOT, FILLED_ABOVE_VALVE, VALVE_LIFTS, ABOVE_FINAL, NO_RESERVE];
}

impl Calculation for VesselCheck {
    type Input = VesselCheckInput;
    type Output = VesselCheckResult;
    const INFO: Info = Info {
        name: "vessel_check",
        title: "Expansion vessel as found",
        summary: "Cold and hot pressure of a sealed system with the vessel and pre-charge found on it, and the water the safety valve would let out.",
        sources: SOURCES,
        accuracy: "The hot pressure to 0.1 bar if content and vessel are known to a few percent; gas and water are taken at one temperature.",
        cautions: &[PRESSURE_CAUTION],
        checked_against: "the vessels of heat/expansion_vessel.csv: filled as sized, each reaches its final pressure",
    };
    const RULES: &'static [Rule] = found::LIST;

    #[inline]
    fn check(&self, input: &VesselCheckInput) -> Raised {
        let [not_hotter, frozen, glycol_in_water, glycol_too_hot, filled_above, _, _, no_reserve] = found::NUMBERS;
        let fraction = input.glycol_mass_fraction.si();
        let (cold, hot) = (input.fill_temperature.si(), input.highest_temperature.si());
        Raised::NONE
            .when(not_hotter, hot <= cold)
            .when(frozen, self.fluid.frozen(fraction, cold))
            .when(glycol_in_water, self.fluid.glycol_in_water(fraction))
            .when(glycol_too_hot, !matches!(self.fluid, Fluid::Water) & (hot > crate::water::HIGHEST_MIXTURE_TEMPERATURE))
            .when(filled_above, input.fill_pressure.si() >= input.safety_valve_pressure.si())
            .when(no_reserve, input.pre_charge.si() >= input.fill_pressure.si())
    }

    #[inline]
    fn review(&self, input: &VesselCheckInput, output: &VesselCheckResult) -> Raised {
        let [_, _, _, _, _, valve_lifts, above_final, _] = found::NUMBERS;
        let pressure = output.hot_pressure.si();
        let lifts = pressure.is_nan() | (pressure > input.safety_valve_pressure.si());
        Raised::NONE.when(valve_lifts, lifts).when(above_final, !lifts & (pressure > output.final_pressure.si() * (1.0 + 1e-9)))
    }

    fn compute<W: Working>(&self, input: &VesselCheckInput, working: &mut W) -> VesselCheckResult {
        step!(working, let expansion: "e" in PERCENT = Ratio::from_si(expansion_share(self.fluid, input.glycol_mass_fraction.si(), input.fill_temperature.si(), input.highest_temperature.si())), "densities at the two temperatures");
        step!(working, let expansion_volume: "V_e" in LITRE = expansion * input.system_content, "EN 12828");
        // A pre-charge above the cold pressure pushes all water out and stays what it is.
        step!(working, let gas_pressure: "p_{g,a}" in BAR = input.fill_pressure.plain().max(input.pre_charge.plain()), "the vessel holds no water below its pre-charge");
        step!(working, let gas_volume_cold: "V_{g,a}" in LITRE = input.vessel_volume * (input.pre_charge.plain() + input.barometric_pressure.plain()) / (gas_pressure + input.barometric_pressure.plain()), "Boyle's law");
        step!(working, let water_reserve: "V_{WR}" in LITRE = input.vessel_volume - gas_volume_cold, "definition");
        step!(working, let final_pressure: "p_e" in BAR = (input.safety_valve_pressure.plain() - Pressure::from_si(50_000.0)).min(0.9 * input.safety_valve_pressure.plain()), "EN 12828");
        step!(working, let gas_volume_final: "V_{g,e}" in LITRE = input.vessel_volume * (input.pre_charge.plain() + input.barometric_pressure.plain()) / (final_pressure + input.barometric_pressure.plain()), "Boyle's law");
        step!(working, let gas_volume_hot: "V_{g,h}" in LITRE = gas_volume_cold - expansion_volume, "the expansion goes into the vessel");
        step!(working, let hot_pressure: "p_h" in BAR = (input.pre_charge.plain() + input.barometric_pressure.plain()) * input.vessel_volume / gas_volume_hot - input.barometric_pressure.plain(), "Boyle's law");
        step!(working, let gas_at_valve: "V_{g,SV}" in LITRE = input.vessel_volume * (input.pre_charge.plain() + input.barometric_pressure.plain()) / (input.safety_valve_pressure.plain() + input.barometric_pressure.plain()), "Boyle's law");
        // Zero that is not a number where the gas volume is none.
        let zero = 0.0 * gas_volume_hot;
        step!(working, let water_lost: "V_{lost}" in LITRE = (gas_at_valve - gas_volume_hot).max(zero), "what the gas cannot give way for below the valve's pressure");
        VesselCheckResult {
            expansion_volume,
            gas_volume_cold,
            water_reserve,
            take_up: Volume::from_si((gas_volume_cold.si() - gas_volume_final.si()).max(zero.si())),
            hot_pressure: GaugePressure::from_si(if gas_volume_hot.si() > 0.0 { hot_pressure.si() } else { f64::NAN }),
            final_pressure: GaugePressure::new(final_pressure),
            water_lost,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::water::Antifreeze;
    use crate::water::tests::assert_close;
    use flamewright_reference::{Row, rows};

    fn celsius(value: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si(value + 273.15)
    }

    fn input_of(row: &Row) -> ExpansionVesselInput {
        ExpansionVesselInput {
            system_content: Volume::from_si(row.number("V_system_L") / 1e3),
            fill_temperature: celsius(row.number("T_fill_C")),
            highest_temperature: celsius(row.number("T_max_C")),
            static_height: Length::from_si(row.number("static_height_m")),
            pressure_margin: Pressure::from_si(row.number("p_margin_bar") * 1e5),
            safety_valve_pressure: GaugePressure::from_si(row.number("p_safety_valve_bar") * 1e5),
            ..ExpansionVesselInput::unset()
        }
    }

    #[test]
    fn reference_vessels() {
        let file = rows("heat/expansion_vessel.csv");
        for row in &file {
            let own = ExpansionVessel::default().evaluate(&input_of(row)).unwrap();
            assert_close(own.expansion_share.si() * 100.0, row.number("e_pct"), 1e-5, &row.place);
            let given = ExpansionVesselInput { expansion_share: Ratio::from_si(row.number("e_pct") / 100.0), ..input_of(row) };
            let got = ExpansionVessel::default().evaluate(&given).unwrap();
            for (value, column) in [
                (got.static_pressure.si() / 1e5, "p_static_bar"),
                (got.pre_charge.si() / 1e5, "p0_bar"),
                (got.final_pressure.si() / 1e5, "p_final_bar"),
                (got.expansion_volume.si() * 1e3, "V_expansion_L"),
                (got.water_reserve.si() * 1e3, "V_reserve_L"),
                (got.acceptance.si(), "acceptance"),
                (got.vessel_volume.si() * 1e3, "V_vessel_min_L"),
                (got.vessel_volume_with_fifth.si() * 1e3, "V_vessel_if_20pct_reserve_L"),
                (got.vessel_volume_without_reserve.si() * 1e3, "V_vessel_no_reserve_L"),
                (got.fill_pressure.si() / 1e5, "p_initial_fill_min_bar"),
            ] {
                assert_close(value, row.number(column), 1e-6, &std::format!("{} {column}", row.place));
            }
            // Filled as sized, the vessel reaches its final pressure and no more.
            let check = VesselCheck::default()
                .evaluate(&VesselCheckInput {
                    vessel_volume: own.vessel_volume,
                    pre_charge: own.pre_charge,
                    fill_pressure: own.fill_pressure,
                    system_content: given.system_content,
                    fill_temperature: given.fill_temperature,
                    highest_temperature: given.highest_temperature,
                    safety_valve_pressure: given.safety_valve_pressure,
                    ..VesselCheckInput::unset()
                })
                .unwrap();
            assert_close(check.hot_pressure.si(), own.final_pressure.si(), 1e-9, &row.place);
            assert_close(check.water_reserve.si(), own.water_reserve.si(), 1e-9, &row.place);
            assert_eq!(check.water_lost.si(), 0.0);
            assert!(check.notices().iter().all(|notice| notice.code == "UNUSUAL"), "{:?}", check.notices());
        }
        assert_eq!(file.len(), 6);
    }

    #[test]
    fn reference_expansion() {
        let share = |fluid, w, from: f64, to: f64| 100.0 * expansion_share(fluid, w, from + 273.15, to + 273.15);
        let propylene = Fluid::Glycol(Antifreeze::PropyleneGlycol);
        for row in rows("heat/expansion_water.csv") {
            let to = row.number("T_max_C");
            assert_close(share(Fluid::Water, 0.0, 10.0, to), row.number("expansion_from_10C_pct"), 1e-5, &row.place);
            assert_close(share(Fluid::Water, 0.0, 4.0, to), row.number("expansion_from_4C_pct"), 1e-5, &row.place);
            for (w, column) in [(0.2, "MPG20_from_10C_pct"), (0.3, "MPG30_from_10C_pct"), (0.4, "MPG40_from_10C_pct")] {
                if let Some(expected) = row.maybe(column) {
                    assert_close(share(propylene, w, 10.0, to), expected, 1e-5, &row.place);
                }
            }
            if let Some(printed) = row.maybe("BS7074_e_from_4C_pct_from_memory") {
                assert!((share(Fluid::Water, 0.0, 4.0, to) - printed).abs() < 0.01, "{}", row.place);
            }
        }
    }

    #[test]
    fn published_vessel_factors() {
        for row in rows("heat/published_hydraulic_examples.csv").iter().filter(|row| row.text("example_id") == "H05") {
            let initial = if row.text("inputs").contains("pressure 1.0 bar") { 1.0e5 } else { 0.5e5 };
            let input = ExpansionVesselInput {
                system_content: Volume::from_si(1.0),
                highest_temperature: celsius(80.0),
                static_height: Length::from_si(0.0),
                least_pre_charge: GaugePressure::from_si(initial),
                // The source's final pressure of 2.65 bar, half a bar below.
                safety_valve_pressure: GaugePressure::from_si(3.15e5),
                expansion_share: Ratio::from_si(0.0492),
                ..ExpansionVesselInput::unset()
            };
            let got = ExpansionVessel::default().evaluate(&input).unwrap();
            assert_close(got.vessel_volume_without_reserve.si(), row.number("value_published"), 5e-3, &row.place);
        }
    }

    #[test]
    fn a_lost_pre_charge_lifts_the_valve() {
        let sound = VesselCheckInput {
            vessel_volume: Volume::from_si(0.012),
            pre_charge: GaugePressure::from_si(0.7e5),
            fill_pressure: GaugePressure::from_si(1.2e5),
            system_content: Volume::from_si(0.1),
            highest_temperature: celsius(80.0),
            ..VesselCheckInput::unset()
        };
        let right = VesselCheck::default().evaluate(&sound).unwrap();
        assert!(right.hot_pressure.si() < 2.5e5 && right.water_lost.si() == 0.0);
        let lost = VesselCheck::default().evaluate(&VesselCheckInput { pre_charge: GaugePressure::from_si(0.0), ..sound }).unwrap();
        // By hand: 12 L at 1 bar abs hold 12/2.2 = 5.4545 L of gas cold, 2.582 L hot: 4.648 bar abs.
        assert_close(lost.hot_pressure.si(), 12.0e5 / (12.0 / 2.2 - 2.872_486) - 1e5, 1e-5, "hot");
        assert_close(lost.water_lost.si() * 1e3, 3.0 - (12.0 / 2.2 - 2.872_486), 1e-5, "lost");
        assert!(lost.notices().iter().any(|notice| notice.code == "VALVE_LIFTS"));
        let flat = VesselCheck::default()
            .evaluate(&VesselCheckInput {
                pre_charge: GaugePressure::from_si(0.0),
                fill_pressure: GaugePressure::from_si(2.9e5),
                system_content: Volume::from_si(0.2),
                ..sound
            })
            .unwrap();
        assert!(flat.hot_pressure.si().is_nan() && flat.notices().iter().any(|notice| notice.code == "VALVE_LIFTS"));
        let over = VesselCheck::default().evaluate(&VesselCheckInput { pre_charge: GaugePressure::from_si(1.5e5), ..sound }).unwrap();
        assert!(over.notices().iter().any(|notice| notice.code == "NO_RESERVE") && over.water_reserve.si() == 0.0);
    }

    #[test]
    fn hotter_larger_and_higher_need_more_vessel() {
        let at = |content: f64, hot: f64, height: f64| {
            let input = ExpansionVesselInput {
                system_content: Volume::from_si(content / 1e3),
                highest_temperature: celsius(hot),
                static_height: Length::from_si(height),
                ..ExpansionVesselInput::unset()
            };
            ExpansionVessel::default().evaluate(&input).map(|got| got.vessel_volume.si())
        };
        for step in 0..50 {
            let (content, hot, height) = (50.0 + 20.0 * f64::from(step), 40.0 + f64::from(step), 5.0 + 0.2 * f64::from(step));
            let here = at(content, hot, height).unwrap();
            assert!(at(content + 1.0, hot, height).unwrap() > here);
            assert!(at(content, hot + 1.0, height).unwrap() > here);
            assert!(at(content, hot, height + 0.5).unwrap() > here);
        }
        assert_eq!(at(100.0, 80.0, 25.0).unwrap_err().code(), "NO_ROOM");
        assert_eq!(at(100.0, 10.0, 5.0).unwrap_err().code(), "NOT_HOTTER");
    }
}
