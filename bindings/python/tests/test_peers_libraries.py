"""Calculations beside independent libraries, on random inputs over the range that both accept.

Each test draws from its own fixed beginning, so that a run repeats. The findings go to the
validation report: see peers.py.
"""

import flamewright as fw
import numpy as np
import pytest
from peers import compare, write

KELVIN = 273.15
ATMOSPHERE = 101325.0


@pytest.fixture(scope="module", autouse=True)
def findings():
    yield
    write()


def si(name, **given):
    """All results, SI, of bare SI numbers."""
    return fw.evaluate(name, **given).si


def span(calculation, name):
    """The range of an input, SI."""
    field = getattr(fw, calculation).input_fields[name]
    return tuple(field[end] * field["unit_factor"] + field["unit_offset"] for end in ("minimum", "maximum"))


def draws(seed, count=400):
    generator = np.random.default_rng(seed)
    return lambda low, high: generator.uniform(low, high, count)


def test_water_beside_iapws_and_coolprop():
    iapws = pytest.importorskip("iapws")
    coolprop = pytest.importorskip("CoolProp.CoolProp")
    draw = draws(11)
    coldest, hottest = span("liquid_water", "temperature")
    temperature = draw(coldest + 0.05, hottest)
    saturation = np.array([coolprop.PropsSI("P", "T", t, "Q", 0, "Water") for t in temperature])
    least, greatest = span("liquid_water", "pressure")
    low = np.maximum(1.001 * saturation, least)
    pressure = low * (greatest / low) ** draw(0, 1)
    at = {"K": temperature, "Pa": pressure}
    ours = si("liquid_water", temperature=temperature, pressure=pressure)
    states = [iapws.IAPWS97(T=t, P=p / 1e6) for t, p in zip(temperature, pressure, strict=True)]
    for name, theirs, relative in [
        ("density", [s.rho for s in states], 1e-9),
        ("specific_heat_capacity", [1e3 * s.cp for s in states], 1e-9),
        ("dynamic_viscosity", [s.mu for s in states], 1e-9),
        ("thermal_conductivity", [s.k for s in states], 1e-6),
    ]:
        compare("liquid_water", name, "iapws (IF97)", ours[name], theirs, relative=relative, at=at)
    compare("liquid_water", "specific_enthalpy", "iapws (IF97)", ours["specific_enthalpy"], [1e3 * s.h for s in states], absolute=1e-2, unit="J/kg", at=at)
    for name, key, relative in [
        ("density", "D", 5e-5), ("specific_heat_capacity", "C", 2e-3), ("dynamic_viscosity", "V", 2e-3), ("thermal_conductivity", "L", 2e-3),
    ]:
        theirs = [coolprop.PropsSI(key, "T", t, "P", p, "Water") for t, p in zip(temperature, pressure, strict=True)]
        compare("liquid_water", name, "CoolProp (IAPWS-95)", ours[name], theirs, relative=relative, at=at)


def test_saturation_beside_coolprop():
    coolprop = pytest.importorskip("CoolProp.CoolProp")
    temperature = draws(12)(KELVIN + 0.05, KELVIN + 100)
    ours = si("saturated_water", temperature=temperature)
    compare("saturated_water", "saturation_pressure", "CoolProp (IAPWS-95)", ours["saturation_pressure"],
            [coolprop.PropsSI("P", "T", t, "Q", 0, "Water") for t in temperature], relative=1e-4, at={"K": temperature})
    latent = [coolprop.PropsSI("H", "T", t, "Q", 1, "Water") - coolprop.PropsSI("H", "T", t, "Q", 0, "Water") for t in temperature]
    compare("saturated_water", "heat_of_vaporisation", "CoolProp (IAPWS-95)", ours["heat_of_vaporisation"], latent, relative=1e-5, at={"K": temperature})
    gauge = draws(13)(-0.5e5, 9e5)
    boiling = si("boiling_point", water_pressure=gauge, barometric_pressure=1e5)["boiling_point"]
    compare("boiling_point", "boiling_point", "CoolProp (IAPWS-95)", boiling, [coolprop.PropsSI("T", "P", 1e5 + g, "Q", 0, "Water") for g in gauge],
            absolute=0.02, unit="K", at={"Pa gauge": gauge})


def test_air_beside_coolprop():
    coolprop = pytest.importorskip("CoolProp.CoolProp")
    draw = draws(14)
    temperature = draw(*span("dry_air", "temperature"))
    pressure = draw(*span("dry_air", "pressure"))
    ours = si("dry_air", temperature=temperature, pressure=pressure)
    for name, key, relative in [("density", "D", 1e-3), ("specific_heat_capacity", "C", 2e-3), ("dynamic_viscosity", "V", 2e-3), ("thermal_conductivity", "L", 3e-3)]:
        theirs = [coolprop.PropsSI(key, "T", t, "P", p, "Air") for t, p in zip(temperature, pressure, strict=True)]
        compare("dry_air", name, "CoolProp (Lemmon)", ours[name], theirs, relative=relative, at={"K": temperature, "Pa": pressure})
    coldest, hottest = span("humid_air", "temperature")
    temperature, humidity, pressure = draw(coldest + 0.5, hottest), draw(0.05, 1.0), draw(*span("humid_air", "pressure"))
    ours = si("humid_air", temperature=temperature, relative_humidity=humidity, pressure=pressure)
    at = {"K": temperature, "of 1": humidity, "Pa": pressure}
    for name, key, how in [("humidity_ratio", "W", {"relative": 2e-4}), ("dew_point", "D", {"absolute": 0.003, "unit": "K"})]:
        theirs = [coolprop.HAPropsSI(key, "T", t, "R", r, "P", p) for t, r, p in zip(temperature, humidity, pressure, strict=True)]
        if name == "dew_point":
            keep = np.array(theirs) > KELVIN + 0.1
            compare("humid_air", name, "CoolProp (RP-1485)", ours[name][keep], np.array(theirs)[keep], **how, at={k: v[keep] for k, v in at.items()})
        else:
            compare("humid_air", name, "CoolProp (RP-1485)", ours[name], theirs, **how, at=at)
    volume = [coolprop.HAPropsSI("Vha", "T", t, "R", r, "P", p) for t, r, p in zip(temperature, humidity, pressure, strict=True)]
    compare("humid_air", "density", "CoolProp (RP-1485)", ours["density"], 1 / np.array(volume), relative=2e-4, at=at)


def test_glycol_beside_coolprop():
    coolprop = pytest.importorskip("CoolProp.CoolProp")
    draw = draws(15)
    for antifreeze, fluid in [("propylene glycol", "MPG"), ("ethylene glycol", "MEG")]:
        share, temperature = draw(0.05, 0.55), draw(KELVIN + 0.5, KELVIN + 95)
        record = si("antifreeze_mixture", antifreeze=antifreeze, glycol_mass_fraction=share, temperature=temperature)
        for name, key in [("density", "D"), ("specific_heat_capacity", "C"), ("dynamic_viscosity", "V"), ("thermal_conductivity", "L")]:
            theirs = [coolprop.PropsSI(key, "T", t, "P", 1e6, f"INCOMP::{fluid}[{s}]") for t, s in zip(temperature, share, strict=True)]
            compare("antifreeze_mixture", f"{name} of {antifreeze}", "CoolProp (Melinder)", record[name], theirs, relative=1e-6, at={"K": temperature, "share": share})


SPECIES = {"carbon_dioxide": "CO2", "water_vapour": "H2O", "oxygen": "O2", "nitrogen": "N2", "argon": "Ar", "carbon_monoxide": "CO", "sulphur_dioxide": "SO2"}
AIR = {"O2": 0.2095, "N2": 0.7808, "Ar": 0.0093, "CO2": 0.0004}


@pytest.fixture(scope="module")
def cantera():
    return pytest.importorskip("cantera")


@pytest.fixture(scope="module")
def gas(cantera):
    wanted = ["CH4", "C2H6", "C3H8", "H2", "CO", "CO2", "H2O", "O2", "N2", "Ar", "SO2", "OH", "H", "O", "NO"]
    found = {s.name: s for s in cantera.Species.list_from_file("nasa_gas.yaml")}
    return cantera.Solution(thermo="ideal-gas", species=[found[name] for name in wanted])


def test_enthalpies_beside_cantera(gas):
    temperature = draws(16, 200)(*span("gas_enthalpy", "temperature"))
    ours = si("gas_enthalpy", temperature=temperature)
    for name, formula in SPECIES.items():
        one = gas.species(formula).thermo
        theirs = [(one.h(t) - one.h(298.15)) / 1e3 for t in temperature]
        compare("gas_enthalpy", name, "Cantera (NASA-7)", ours[name], theirs, absolute=0.5, unit="J/mol", at={"K": temperature})


def random_fuels(generator, count):
    """Mole fractions of burnable mixtures."""
    for _ in range(count):
        amounts = dict(zip(["CH4", "C2H6", "C3H8", "H2", "CO", "N2", "CO2"], generator.dirichlet([3, 1, 1, 1, 0.5, 0.5, 0.3]), strict=True))
        yield amounts


def test_combustion_beside_cantera(cantera, gas):
    coolprop = pytest.importorskip("CoolProp.CoolProp")
    generator = np.random.default_rng(17)
    names = ["oxygen_dry", "carbon_dioxide_dry", "water_wet", "nitrogen_wet", "wet_flue", "flue_molar_mass", "water_dew_point"]
    found: dict[str, list] = {name: [] for name in names}
    theirs: dict[str, list] = {name: [] for name in names}
    ratios = generator.uniform(1.0, 4.0, 120)
    for fuel, ratio in zip(random_fuels(generator, 120), ratios, strict=True):
        text = " ".join(f"{k}={v!r}" for k, v in ((k, float(v)) for k, v in fuel.items()))
        ours = fw.evaluate("combustion_products", fuel={"composition": text, "normalise": True}, excess_air_ratio=float(ratio)).si
        # Atoms of the fuel from Cantera's species, and what complete combustion makes of them.
        atoms = {e: sum(x * gas.species(s).composition.get(e, 0) for s, x in fuel.items()) for e in ("C", "H", "O", "N")}
        needed = (atoms["C"] + atoms["H"] / 4 - atoms["O"] / 2) / AIR["O2"]
        air = {s: x * needed * ratio for s, x in AIR.items()}
        flue = {"CO2": atoms["C"] + air["CO2"], "H2O": atoms["H"] / 2, "O2": air["O2"] - needed * AIR["O2"], "N2": atoms["N"] / 2 + air["N2"], "Ar": air["Ar"]}
        gas.TPX = 400.0, ATMOSPHERE, flue
        wet, dry = sum(flue.values()), sum(flue.values()) - flue["H2O"]
        values = [flue["O2"] / dry, flue["CO2"] / dry, flue["H2O"] / wet, flue["N2"] / wet, wet, gas.mean_molecular_weight / 1e3,
                  coolprop.PropsSI("T", "P", ATMOSPHERE * flue["H2O"] / wet, "Q", 0, "Water")]
        for name, value in zip(names, values, strict=True):
            found[name].append(ours[name])
            theirs[name].append(value)
    for name in names:
        how = {"absolute": 0.02, "unit": "K"} if name == "water_dew_point" else {"absolute": 1e-9} if name == "oxygen_dry" else {"relative": 2e-6}
        if name == "flue_molar_mass":
            how = {"relative": 2e-5}  # Cantera's atomic masses are younger than those of ISO 6976.
        compare("combustion_products", name, "Cantera atoms, CoolProp saturation" if how.get("unit") else "Cantera atoms", found[name], theirs[name],
                **how, at={"excess air ratio": ratios})


def test_efficiency_beside_absolute_enthalpies_of_cantera(gas):
    generator = np.random.default_rng(18)
    count = 200
    oxygen, flue_temperature, air_temperature = generator.uniform(0.005, 0.15, count), generator.uniform(345, 600, count), generator.uniform(263, 313, count)
    ours = si("flue_analysis", fuel="G20", oxygen_dry=oxygen, carbon_monoxide_dry=0.0, flue_temperature=flue_temperature, air_temperature=air_temperature)
    ratio = ours["excess_air_ratio"]
    net = si("fuel_properties", fuel="G20", combustion_temperature=298.15)["net_molar_calorific_value"]
    h = {name: gas.species(name).thermo.h for name in ("CH4", "CO2", "H2O", "O2", "N2", "Ar")}
    theirs = []
    for i in range(count):
        air = {s: x * 2 / AIR["O2"] * ratio[i] for s, x in AIR.items()}
        into = h["CH4"](air_temperature[i]) + sum(n * h[s](air_temperature[i]) for s, n in air.items())
        out = {"CO2": 1 + air["CO2"], "H2O": 2.0, "O2": air["O2"] - 2, "N2": air["N2"], "Ar": air["Ar"]}
        theirs.append((into - sum(n * h[s](flue_temperature[i]) for s, n in out.items())) / 1e3 / net)
        dry = sum(out.values()) - 2.0
        assert out["O2"] / dry == pytest.approx(oxygen[i], abs=1e-6)
    compare("flue_analysis", "efficiency_net", "Cantera (absolute enthalpies)", ours["efficiency_net"], theirs, absolute=1e-4,
            at={"oxygen": oxygen, "flue K": flue_temperature, "air K": air_temperature})


def test_flame_beside_cantera(gas):
    generator = np.random.default_rng(19)
    ratios, temperatures, pressures = generator.uniform(1, 3, 60), generator.uniform(260, 330, 60), generator.uniform(0.7e5, 1.1e5, 60)
    for fuel, formula, need in [("CH4=1", "CH4", 2.0), ("C3H8=1", "C3H8", 5.0), ("H2=1", "H2", 0.5)]:
        ours = fw.evaluate("flame_temperature", fuel=fuel, excess_air_ratio=ratios, fuel_temperature=temperatures, air_temperature=temperatures, pressure=pressures).si
        theirs, monoxide = [], []
        for ratio, temperature, pressure in zip(ratios, temperatures, pressures, strict=True):
            mixture = {s: x * need / AIR["O2"] * ratio for s, x in AIR.items()}
            mixture[formula] = 1.0
            gas.TPX = temperature, pressure, mixture
            gas.equilibrate("HP")
            theirs.append(gas.T)
            monoxide.append(gas["NO"].X[0])
        at = {"excess air ratio": ratios, "K": temperatures, "Pa": pressures}
        compare("flame_temperature", f"flame_temperature of {formula}", "Cantera (HP equilibrium)", ours["flame_temperature"], theirs, absolute=0.5, unit="K", at=at)
        compare("flame_temperature", f"nitric_oxide_wet of {formula}", "Cantera (HP equilibrium)", ours["nitric_oxide_wet"], monoxide, relative=0.01, at=at)


def test_friction_beside_fluids():
    friction = pytest.importorskip("fluids.friction")
    generator = np.random.default_rng(20)
    reynolds, roughness = 10 ** generator.uniform(np.log10(4001), 7.9, 400), 10 ** generator.uniform(-6, np.log10(0.049), 400)
    at = {"Re": reynolds, "roughness": roughness}
    for equation, theirs in [("Colebrook", friction.Colebrook), ("Haaland", friction.Haaland)]:
        ours = fw.evaluate("friction_factor", equation=equation, reynolds_number=reynolds, relative_roughness=roughness).si["friction_factor"]
        compare("friction_factor", f"friction_factor by {equation}", "fluids", ours, [theirs(r, e) for r, e in zip(reynolds, roughness, strict=True)], relative=1e-9, at=at)
    slow = generator.uniform(1, 2039, 100)  # where fluids, too, calls it laminar
    ours = si("friction_factor", reynolds_number=slow, relative_roughness=0.001)["friction_factor"]
    compare("friction_factor", "friction_factor, laminar", "fluids", ours, [friction.friction_factor(r, 0.001) for r in slow], relative=1e-12, at={"Re": slow})


def test_natural_convection_beside_ht():
    ht = pytest.importorskip("ht.conv_free_immersed")
    coolprop = pytest.importorskip("CoolProp.CoolProp")
    draw = draws(21, 300)
    surface, air, diameter = draw(KELVIN + 30, KELVIN + 100), draw(KELVIN - 10, KELVIN + 28), draw(0.008, 0.2)
    ours = fw.evaluate("pipe_heat_loss", water_temperature=surface, air_temperature=air, outside_diameter=diameter, wall_thickness=0.0,
                       wall_conductivity=385.0, emissivity=0.9).si
    film = (surface + air) / 2
    density, viscosity, conductivity, heat = ([coolprop.PropsSI(k, "T", t, "P", ATMOSPHERE, "Air") for t in film] for k in "DVLC")
    density, viscosity, conductivity, heat = map(np.array, (density, viscosity, conductivity, heat))
    prandtl, kinematic = heat * viscosity / conductivity, viscosity / density
    grashof = 9.80665 / film * (surface - air) * diameter**3 / kinematic**2
    theirs = [ht.Nu_horizontal_cylinder_Churchill_Chu(p, g) for p, g in zip(prandtl, grashof, strict=True)]
    at = {"surface K": surface, "air K": air, "diameter m": diameter}
    compare("pipe_heat_loss", "nusselt_number", "ht, CoolProp air", ours["nusselt_number"], theirs, relative=1e-4, at=at)
    loss = np.pi * diameter * ((surface - air) * np.array(theirs) * conductivity / diameter + 0.9 * 5.670374419e-8 * (surface**4 - air**4))
    compare("pipe_heat_loss", "heat_loss_per_length", "ht, CoolProp air", ours["heat_loss_per_length"], loss, relative=1e-4, at=at)


def test_cooling_and_rooms_beside_scipy():
    integrate = pytest.importorskip("scipy.integrate")
    generator = np.random.default_rng(22)
    count = 60
    capacity, convective, exponent, area = (generator.uniform(*span, count) for span in [(2e4, 4e5), (50, 2000), (1.0, 1.4), (0.0, 2.0)])
    start, target, room = generator.uniform(343, 363, count), generator.uniform(308, 338, count), generator.uniform(280, 298, count)
    ours = fw.evaluate("block_cool_down", heat_capacity=capacity, convective_loss=convective, loss_exponent=exponent, radiating_area=area, emissivity=0.9,
                       room_temperature=room, start_temperature=start, target_temperature=target).si["time"]

    def rate(t, i):
        return convective[i] * ((t - room[i]) / 50) ** exponent[i] + 0.9 * 5.670374419e-8 * area[i] * (t**4 - room[i] ** 4)

    theirs = [integrate.quad(lambda t, i=i: capacity[i] / rate(t, i), target[i], start[i], epsrel=1e-12)[0] for i in range(count)]
    compare("block_cool_down", "time", "scipy.integrate.quad", ours, theirs, relative=1e-8, at={"exponent": exponent})
    source, volume, changes, hours = (generator.uniform(*span, count) for span in [(1e-9, 1e-6), (10, 100), (1e-4, 1e-3), (600, 20000)])
    ours = fw.evaluate("room_concentration", source=source, room_volume=volume, air_change_rate=changes, elapsed_time=hours).si["concentration"]
    theirs = [integrate.solve_ivp(lambda t, c, i=i: source[i] / volume[i] - changes[i] * c, (0, hours[i]), [0.0], method="DOP853", rtol=1e-11, atol=1e-20).y[0, -1]
              for i in range(count)]
    compare("room_concentration", "concentration", "scipy.integrate.solve_ivp", ours, theirs, relative=1e-8, at={"s": hours})


def test_platinum_beside_a_root_finder():
    optimize = pytest.importorskip("scipy.optimize")
    resistance = np.random.default_rng(23).uniform(19.0, 390.0, 300)
    ours = si("platinum_temperature", resistance=resistance, resistance_at_zero=100.0)["temperature"]

    def curve(t):
        # IEC 60751: the cubic term below zero only.
        return 100 * (1 + 3.9083e-3 * t - 5.775e-7 * t**2 - (4.183e-12 * (t - 100) * t**3 if t < 0 else 0.0))

    theirs = [optimize.brentq(lambda t, r=r: curve(t) - r, -201, 851, xtol=1e-12) + KELVIN for r in resistance]
    compare("platinum_temperature", "temperature", "scipy.optimize.brentq", ours, theirs, absolute=1e-8, unit="K", at={"ohm": resistance})


def test_repeated_readings_beside_scipy():
    stats = pytest.importorskip("scipy.stats")
    generator = np.random.default_rng(24)
    ours, theirs = [], []
    for _ in range(50):
        outs, ins = generator.normal(80, 0.5, 6), generator.normal(72, 0.5, 6)
        test = fw.thermostat_test(cut_outs=[f"{v!r} degC" for v in outs.tolist()], cut_ins=[f"{v!r} degC" for v in ins.tolist()])
        ours.append([test.cut_out.magnitude, test.cut_out_repeatability.si, test.cut_out_uncertainty.si])
        theirs.append([outs.mean(), stats.tstd(outs), stats.sem(outs)])
    for i, name in enumerate(["cut_out", "cut_out_repeatability", "cut_out_uncertainty"]):
        compare("thermostat_test", name, "scipy.stats", np.array(ours)[:, i], np.array(theirs)[:, i], relative=1e-9)


UNITS = {
    "gauge_pressure": "Pa hPa kPa MPa mbar bar atm psi torr mmHg inHg cmHg",
    "length": "m mm cm km um inch foot", "time": "s ms min hour day", "mass": "kg g mg tonne pound", "volume": "m^3 litre mL cubic_foot mm^3",
    "power": "W kW MW Btu/hour", "energy": "J kJ MJ GJ Wh kWh MWh Btu", "temperature": "degC degF K", "volume_flow": "m^3/hour L/min L/s ft^3/hour",
    "density": "kg/m^3 g/cm^3 lb/ft^3 kg/L g/L", "calorific_value": "MJ/m^3 kWh/m^3 kJ/L Btu/ft^3", "mass_flow": "kg/s kg/hour g/s lb/hour",
    "velocity": "m/s ft/s km/hour ft/min", "viscosity": "Pa*s", "conductivity": "W/(m*K) mW/(m*K)", "transfer": "W/(m^2*K) kW/(m^2*K)",
    "heat_capacity": "J/(kg*K) kJ/(kg*K) Wh/(kg*K)", "conductance": "W/K kW/K", "area": "m^2 mm^2 cm^2 in^2 ft^2", "angle": "rad degree",
    "resistance": "ohm kohm Mohm mohm", "voltage": "V mV uV", "amount": "mol kmol",
}
FIELD = {
    "gauge_pressure": ("absolute_pressure", "gauge_pressure"), "length": ("local_gravity", "height"), "time": ("purge_velocity", "travel_time"),
    "mass": ("heat_store", "cast_iron_mass"), "volume": ("heat_store", "water_content"), "power": ("flow_from_heat", "heat_output"),
    "energy": ("heat_store", "heat"), "temperature": ("liquid_water", "temperature"), "volume_flow": ("water_pressure_drop", "volume_flow"),
    "density": ("liquid_water", "density"), "calorific_value": ("gas_rate", "gross_calorific_value"), "mass_flow": ("cool_down", "pump_flow"),
    "velocity": ("purge_velocity", "velocity"), "viscosity": ("liquid_water", "dynamic_viscosity"), "conductivity": ("liquid_water", "thermal_conductivity"),
    "transfer": ("critical_radius", "outside_coefficient"), "heat_capacity": ("liquid_water", "specific_heat_capacity"),
    "conductance": ("cool_down", "casing_loss"), "area": ("opening_flow", "free_area"), "angle": ("inclined_gauge", "angle"),
    "resistance": ("platinum_resistance", "resistance_at_zero"), "voltage": ("thermocouple_voltage", "voltage"), "amount": ("tightness_test", "amount_lost"),
}


def test_units_beside_pint():
    pint = pytest.importorskip("pint")
    registry = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
    tested = []
    for kind, names in UNITS.items():
        calculation, name = FIELD[kind]
        entry = getattr(fw, calculation)
        field = {**entry.input_fields, **entry.output_fields}[name]
        for unit in names.split():
            factor, offset = fw._flamewright.scale_of(field["quantity"], field["basis"], unit)
            for number in (1.0, 7.5):
                theirs = registry.Quantity(number, unit).to_base_units().magnitude
                tested.append((number * factor + offset, theirs))
    ours, theirs = np.array(tested).T
    # pint carries conventional mercury to seven digits.
    compare("units", "conversion", "pint", ours, theirs, relative=2e-6)
