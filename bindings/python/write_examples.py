"""Writes `python/flamewright/_examples.py`: the examples that `help()` shows, with what they print.

`python write_examples.py` runs every example below on the installed package and writes its output
beside it; the tests run them all again. Readings, plant and policies are invented.
"""

from __future__ import annotations

from pathlib import Path

BLOCK = (
    'metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s", flow_length="9 m", return_length="9 m", '
    'pipe_heat_capacity="1900 J/(m K)", pipe_loss="0.9 W/(m K)", room_temperature="18 degC"'
)
HOT = BLOCK + ', block_temperature="82 degC", circuit_temperature="70 degC"'
COLD = BLOCK + ', block_temperature="18 degC", circuit_temperature="18 degC", emitter_output="9 kW", emitter_heat_capacity="180 kJ/K"'
PIPE = 'tube="copper 22x0.9", emissivity=0.9, insulation_thickness="25 mm", insulation_conductivity="0.04 W/(m K)", air_temperature="12 degC"'
NTC = 'curve="beta", reference_resistance="10 kohm", beta="3977 K"'
GAS_SECTIONS = (
    'sections=[{"name": "to tee", "length": "6 m", "tube": "copper 28x0.9"}, '
    '{"name": "boiler", "from": "to tee", "length": "3 m", "tube": "copper 22x0.9", "load": "28 kW"}, '
    '{"name": "hob", "from": "to tee", "length": "4 m", "tube": "copper 15x0.7", "load": "8 kW"}]'
)
UNSIZED = (
    'sections=[{"name": "to tee", "length": "6 m"}, {"name": "boiler", "from": "to tee", "length": "3 m", "load": "28 kW"}, '
    '{"name": "hob", "from": "to tee", "length": "4 m", "load": "8 kW"}], tubes=["copper 15x0.7", "copper 22x0.9", "copper 28x0.9"]'
)
WATER_SECTIONS = (
    'sections=[{"name": "riser", "tube": "copper 28x0.9", "length": "12 m", "volume_flow": "900 L/h"}, '
    '{"name": "hall", "tube": "copper 22x0.9", "length": "16 m", "volume_flow": "600 L/h", "fittings": {"elbow 90": 4}}, '
    '{"name": "office", "tube": "copper 15x0.7", "length": "10 m", "volume_flow": "300 L/h", "fittings": {"elbow 90": 4}}], '
    'circuits=[{"name": "hall", "sections": ["riser", "hall"]}, {"name": "office", "sections": ["riser", "office"]}]'
)

#: By calculation: what is given, and the results to show.
EXAMPLES = {
    "combustion_air_flow": ('heat_input_net="28 kW", net_calorific_value="34 MJ/m3", stoichiometric_air=9.55, excess_air_ratio=1.3', "gas_rate air_flow"),
    "combustion_products": ('fuel="G20", excess_air_ratio=1.28', "wet_flue oxygen_dry carbon_dioxide_dry water_dew_point"),
    "flame_temperature": ('fuel="G20", excess_air_ratio=1.2, fuel_temperature="15 degC", air_temperature="15 degC"', "flame_temperature flame_temperature_complete"),
    "gas_enthalpy": ('temperature="180 degC"', "carbon_dioxide water_vapour nitrogen"),
    "saturated_water": ('temperature="60 degC"', "saturation_pressure heat_of_vaporisation"),
    "carbon_monoxide": ('carbon_monoxide_dry="48 ppm", oxygen_dry="4.6 %", air_oxygen="20.95 %", carbon_dioxide_dry="9.1 %"', "carbon_monoxide_ratio carbon_monoxide_air_free"),
    "flue_analysis": (
        'fuel="G20", oxygen_dry=fw.uncertain("4.6 %", accuracy="0.3 %"), carbon_monoxide_dry="48 ppm", flue_temperature="180 degC", air_temperature="20 degC"',
        "excess_air carbon_monoxide_ratio flue_loss_net efficiency_net",
    ),
    "flue_emissions": ('fuel="G20", oxygen_dry="4.6 %", carbon_monoxide_dry="48 ppm", nitrogen_oxides_dry="60 ppm", reference_oxygen="3 %", air_oxygen="20.95 %"', "carbon_monoxide_at_reference carbon_monoxide_air_free"),
    "mass_concentration": ('gas="carbon monoxide", fraction="48 ppm", temperature="0 degC"', "mass_concentration"),
    "siegert_constants": ('fuel="G20"', "a2 b largest_deviation"),
    "siegert_flue_loss": ('constants="de-natural-gas", oxygen_dry="4.6 %", flue_temperature="180 degC", air_temperature="20 degC"', "flue_loss_net efficiency_net"),
    "volume_fraction": ('gas="nitrogen dioxide", mass_concentration="120 mg/m3", temperature="0 degC"', "fraction"),
    "fuel_properties": ('fuel="G20"', "gross_calorific_value net_calorific_value gross_wobbe_index relative_density"),
    "gas_properties": ('methane="92 %", ethane="5 %", propane="1 %", nitrogen="1 %", carbon_dioxide="1 %"', "gross_calorific_value relative_density gross_wobbe_index"),
    "atmospheric_pressure": ('altitude="350 m"', "standard_pressure"),
    "gas_rate": (
        'fuel="G20", volume="0.100 m3", time="2 min 4.6 s", gas_pressure="20.3 mbar", gas_temperature="9 degC", barometric_pressure="1004 mbar", plate_heat_input_net="28 kW"',
        "gas_rate conversion_factor heat_input_net share_of_plate_net",
    ),
    "gas_rate_uncertainty": ('volume="0.100 m3", meter_resolution="0.001 m3", time="124.6 s", maximum_permissible_error="2 %", gross_calorific_value="37.78 MJ/m3"', "heat_input_gross expanded_uncertainty share_of_meter"),
    "gas_rate_test_time": ('heat_input_gross="31 kW", gross_calorific_value="37.78 MJ/m3", volume="0.1 m3", meter_resolution="0.001 m3", wanted_uncertainty="1 %"', "gas_rate time_for_volume time_for_uncertainty"),
    "gas_energy": ('volume="412 m3", conversion_factor=1.022, gross_calorific_value="39.4 MJ/m3"', "reference_volume energy_gross"),
    "metering_reference_change": ('gross_calorific_value="37.78 MJ/m3", stated_temperature="15 degC", wanted_temperature="0 degC"', "volume_ratio gross_calorific_value"),
    "wobbe_index": ('gross_calorific_value="37.78 MJ/m3", relative_density=0.555', "gross_wobbe_index"),
    "liquid_water": ('temperature="60 degC", pressure="2 bar"', "density specific_heat_capacity dynamic_viscosity"),
    "dry_air": ('temperature="20 degC"', "density thermal_conductivity kinematic_viscosity"),
    "humid_air": ('temperature="20 degC", relative_humidity="60 %"', "dew_point humidity_ratio density"),
    "friction_factor": ("reynolds_number=40000, relative_roughness=0.0005", "friction_factor turbulent_friction_factor"),
    "pipe_heat_loss": (f'water_temperature="70 degC", {PIPE}', "heat_loss_per_length surface_temperature"),
    "pipe_temperature_drop": (f'inlet_temperature="70 degC", water_flow="300 L/h", length="20 m", {PIPE}', "outlet_temperature heat_loss"),
    "pipe_cool_down": (f'start_temperature="70 degC", target_temperature="40 degC", {PIPE}', "time_to_target heat_loss_at_start"),
    "critical_radius": ('outside_diameter="15 mm", insulation_thickness="9 mm", insulation_conductivity="0.04 W/(m K)"', "critical_radius loss_ratio"),
    "antifreeze_mixture": ('antifreeze="propylene glycol", glycol_mass_fraction="30 %", temperature="50 degC"', "freezing_temperature density specific_heat_capacity"),
    "boiling_point": ('water_pressure="1 bar", water_temperature="95 degC"', "boiling_point margin"),
    "cool_down": (f'{HOT}, target_temperature="60 degC"', "time heat_released"),
    "pump_overrun": (f'{HOT}, overrun_temperature="60 degC"', "stop_time heat_left"),
    "overshoot": (
        f'{BLOCK}, film_conductance="900 W/K", block_temperature="70 degC", circuit_temperature="65 degC", burner_output="24 kW", cut_out_temperature="82 degC", limit_temperature="95 degC"',
        "peak_with_pump_stopped peak_with_pump_running margin_with_pump_stopped",
    ),
    "warm_up": (f'{COLD}, burner_output="24 kW", cut_out_temperature="82 degC", target_temperature="60 degC"', "time heat_put_in"),
    "circuit_cycling": (f'{COLD}, burner_output="24 kW", cut_out_temperature="70 degC", cut_in_temperature="62 degC"', "on_time off_time start_rate"),
    "cool_down_fit": (
        'times=["0 min", "5 min", "10 min", "15 min", "20 min", "30 min"], temperatures=["82.0 degC", "76.9 degC", "72.2 degC", "67.9 degC", "64.0 degC", "57.0 degC"], room_temperature="18 degC", heat_capacity="132 kJ/K"',
        "time_constant loss_conductance",
    ),
    "touch_wait": ('policy="house rule of 2026, invented", surface_temperature="82 degC", room_temperature="18 degC", time_constant="55 min", contact_temperature="50 degC"', "wait"),
    "installation_volume": ('pipes=[{"tube": "copper 22x0.9", "length": "12 m"}, {"tube": "copper 15x0.7", "length": "5 m"}], meter_volume="6 L", fittings_allowance="10 %"', "pipe_volume installation_volume"),
    "tightness_test": ('installation_volume="16.3 L", test_pressure="20 mbar", pressure_drop="0.5 mbar", test_duration="2 min", readable_movement="0.25 mbar"', "leak_rate temperature_sensitivity"),
    "tightness_plan": ('installation_volume="16.3 L", readable_movement="0.25 mbar", test_duration="2 min"', "smallest_detectable_leak temperature_sensitivity"),
    "let_by": ('installation_volume="16.3 L", start_pressure="10 mbar", pressure_rise="0.4 mbar", test_duration="1 min", readable_movement="0.25 mbar"', "let_by_rate smallest_detectable_flow"),
    "leak_scaling": ('leak_rate="0.8 L/h", test_pressure="50 mbar", operating_pressure="21 mbar"', "leak_rate_laminar leak_rate_orifice"),
    "leak_class": ('classes=[{"name": "usable", "from": "0 L/h"}, {"name": "to be mended", "from": "1 L/h"}, {"name": "shut off", "from": "5 L/h"}], leak_rate="1.4 L/h"', "class_number class_from class_below"),
    "purge": ('installation_volume="16.3 L", purge_factor=1.5, purge_flow="1 m3/h"', "purge_volume purge_time"),
    "purge_velocity": ('bore="54 mm", velocity="0.6 m/s", length="30 m"', "purge_flow travel_time"),
    "block_cool_down": ('heat_capacity="132 kJ/K", loss_conductance="28 W/K", room_temperature="18 degC", start_temperature="79 degC", target_temperature="60 degC"', "time time_constant"),
    "burner_cycling": ('heat_capacity="98 kJ/K", burner_output="24 kW", load="8 kW", cut_out_temperature="82 degC", cut_in_temperature="74 degC"', "on_time off_time start_rate"),
    "tube_run": ('tube="copper 22x0.9", length="12 m"', "bore content mass"),
    "material_properties": ('material="mineral wool", temperature="50 degC"', "thermal_conductivity density"),
    "flow_from_heat": ('heat_output="12 kW", flow_temperature="70 degC", return_temperature="55 degC"', "mass_flow volume_flow_at_return"),
    "heat_from_flow": ('volume_flow="690 L/h", flow_temperature="70 degC", return_temperature="55 degC"', "heat_output"),
    "emitter_output": ('rated_output="1500 W", flow_temperature="55 degC", return_temperature="45 degC", room_temperature="20 degC"', "heat_output output_factor"),
    "emitter_at_flow": ('rated_output="1500 W", mass_flow="60 kg/h", flow_temperature="70 degC", room_temperature="20 degC"', "return_temperature heat_output"),
    "water_pressure_drop": ('tube="copper 22x0.9", volume_flow="700 L/h", length="24 m", fittings={"elbow 90": 6}', "velocity pressure_drop"),
    "fitting_loss": ('fitting="elbow 90", bore="20.2 mm"', "loss_coefficient equivalent_length"),
    "static_head": ('height="7 m"', "static_pressure"),
    "duty_point": ('pump_flows=["0 m3/h", "1 m3/h", "2 m3/h", "3 m3/h"], pump_pressures=["60 kPa", "55 kPa", "40 kPa", "15 kPa"], known_flow="1.2 m3/h", known_pressure_drop="20 kPa"', "volume_flow pressure"),
    "valve_kv": ('volume_flow="700 L/h", pressure_drop="5 kPa"', "valve_kv"),
    "circuit_balance": (WATER_SECTIONS, "index_pressure_drop greatest_velocity"),
    "expansion_vessel": ('system_content="180 L", highest_temperature="80 degC", static_height="7 m"', "expansion_volume pre_charge vessel_volume"),
    "vessel_check": ('vessel_volume="25 L", pre_charge="0.9 bar", fill_pressure="1.2 bar", system_content="180 L", highest_temperature="80 degC"', "hot_pressure take_up"),
    "system_content": ('pipes=[{"tube": "copper 22x0.9", "length": "40 m"}, {"tube": "copper 15x0.7", "length": "60 m"}], emitter_content="85 L", boiler_content="11 L"', "pipe_content system_content"),
    "heat_store": ('start_temperature="82 degC", end_temperature="60 degC", cast_iron_mass="105 kg", water_content="11 L"', "heat_capacity heat"),
    "inhibitor_dose": ('system_content="180 L", dose_ratio="1 %"', "dose containers"),
    "antifreeze_dose": ('antifreeze="propylene glycol", system_content="180 L", frost_temperature="-15 degC"', "glycol_mass_fraction product_volume"),
    "partial_drain": ('system_content="180 L", drained_volume="40 L", product_fraction="1 %", wanted_fraction="1 %"', "product_lost product_needed"),
    "injector_flow": ('injector_diameter="2.1 mm", burner_pressure="12.5 mbar", relative_density=0.555, discharge_coefficient=0.85, gross_calorific_value="37.78 MJ/m3"', "gas_flow heat_input_gross"),
    "injector_size": ('heat_input_gross="6 kW", gross_calorific_value="37.78 MJ/m3", burner_pressure="12.5 mbar", relative_density=0.555, discharge_coefficient=0.85', "injector_diameter"),
    "burner_pressure": ('heat_input="28.2 kW", burner_pressure="12.5 mbar", wanted_heat_input="26 kW"', "pressure_for_wanted"),
    "altitude": ('altitude="1500 m"', "barometric_pressure heat_input_ratio"),
    "gas_pipe_drop": ('fuel="G20", heat_input_gross="31 kW", length="12 m", tube="copper 22x0.9", inlet_pressure="21 mbar"', "gas_flow velocity drop_at_inlet_density_low"),
    "gas_pipe_discharge": ('fuel="G20", allowed_drop="1 mbar", length="12 m", tube="copper 22x0.9", inlet_pressure="21 mbar"', "gas_flow_low heat_input_gross"),
    "gas_installation": (f'fuel="G20", {GAS_SECTIONS}, inlet_pressure="21 mbar"', "gas_flow greatest_drop pipe_volume"),
    "gas_pipe_sizing": (f'fuel="G20", {UNSIZED}, allowed_drop="1 mbar", inlet_pressure="21 mbar"', "greatest_drop spare_drop widest_bore"),
    "absolute_pressure": ('gauge_pressure="20.3 mbar", barometric_pressure="1004 mbar"', "absolute_pressure"),
    "analyser_reading": ('reading="48 ppm", range_high="2000 ppm", resolution="1 ppm", accuracy_absolute="10 ppm", accuracy_relative="5 %"', "accuracy standard_uncertainty"),
    "flame_supervision_voltage": ('open_circuit_voltage="24 mV", loaded_voltage="12 mV", drop_out_voltage="2.5 mV"', "holding_ratio holding_margin"),
    "inclined_gauge": ('length="62 mm", angle="11.5 deg", relative_density=0.784', "level_difference pressure"),
    "liquid_column": ('level_difference="203 mm", liquid_temperature="15 degC"', "pressure"),
    "local_gravity": ('latitude="52 deg", height="80 m"', "gravity"),
    "platinum_resistance": ('temperature="60 degC", resistance_at_zero="1000 ohm", class_="B"', "resistance tolerance"),
    "platinum_temperature": ('resistance="1232 ohm", resistance_at_zero="1000 ohm", lead_resistance="1 ohm"', "temperature lead_error"),
    "thermistor_beta": ('resistance="2500 ohm", reference_resistance="10 kohm", beta="3977 K"', "temperature"),
    "thermistor_beta_of_points": ('first_resistance="32650 ohm", first_temperature="0 degC", second_resistance="1256 ohm", second_temperature="80 degC"', "beta"),
    "thermistor_temperature": (f'{NTC}, resistance="2500 ohm"', "temperature sensitivity"),
    "thermistor_check": (f'{NTC}, temperature="60 degC", temperature_tolerance="0.5 K", resistance_tolerance="2 %", measured_resistance="2500 ohm"', "lowest_resistance highest_resistance indicated_temperature"),
    "thermistor_fit": (
        'first_resistance="32650 ohm", first_temperature="0 degC", second_resistance="10000 ohm", second_temperature="25 degC", third_resistance="1256 ohm", third_temperature="80 degC", resistance="2500 ohm"',
        "temperature",
    ),
    "thermocouple_temperature": ('voltage="7.5 mV", reference_junction_temperature="22 degC"', "temperature addition_error"),
    "thermocouple_voltage": ('type="K", temperature="205 degC", reference_junction_temperature="22 degC"', "voltage seebeck_coefficient"),
    "thermostat_differential": ('cut_out_temperature="81.8 degC", cut_in_temperature="74.2 degC"', "differential mid_point"),
    "thermostat_test": ('set_point="82 degC", cut_outs=["81.8 degC", "82.1 degC", "81.6 degC"], cut_ins=["74.1 degC", "74.4 degC", "74.0 degC"]', "differential offset cut_out_repeatability"),
    "u_gauge": ('limb_down="101 mm", limb_up="102 mm", liquid_temperature="15 degC"', "level_difference pressure"),
    "vent_free_area": ('width="225 mm", height="150 mm", opening_count=60, opening_width="40 mm", opening_height="6 mm"', "overall_area free_area free_share"),
    "opening_flow": ('free_area="14000 mm2", pressure_difference="4 Pa"', "air_flow equivalent_area"),
    "opening_size": ('air_flow="40 m3/h", pressure_difference="4 Pa"', "free_area"),
    "ventilation_need": ('rating_basis="heat_input_net", heat_input_net="28 kW", threshold="7 kW", area_rate="500 mm2/kW"', "rating_above_threshold free_area"),
    "room_concentration": ('source="0.5 L/h", room_volume="40 m3", air_change_rate="0.6 1/h", elapsed_time="1 h"', "concentration steady"),
    "natural_draught": ('height="5.5 m", outdoor_temperature="6 degC", mean_flue_temperature="110 degC"', "draught reversal_outdoor_temperature"),
    "flue_flow": ('velocity="1.8 m/s", mean_flue_temperature="110 degC", bore="150 mm", length="5.5 m", loss_coefficient=1.2, roughness="1 mm"', "mass_flow pressure_loss"),
    "chimney_draught": ('mass_flow="0.022 kg/s", inlet_temperature="110 degC", outdoor_temperature="6 degC", height="5.5 m", bore="150 mm", thermal_resistance="0.2 m2 K/W"', "mean_flue_temperature outlet_temperature velocity"),
    "flue_gas_flow": ('fuel="G20", heat_input_net="28 kW", excess_air_ratio=1.66, flue_temperature="212 degC"', "mass_flow volume_flow dew_point"),
}


def split(arguments: str) -> list[str]:
    """The arguments of a call, one by one."""
    parts, depth, quoted, start = [], 0, False, 0
    for place, letter in enumerate(arguments):
        quoted ^= letter == '"'
        depth += 0 if quoted else (letter in "([{") - (letter in ")]}")
        if letter == "," and not depth and not quoted:
            parts.append(arguments[start:place].strip())
            start = place + 1
    return [*parts, arguments[start:].strip()]


def source(name: str) -> list[str]:
    """The statements of an example; lines within a statement are continued."""
    arguments, results = EXAMPLES[name]
    lines = [f"result = fw.{name}("]
    for part in split(arguments):
        if lines[-1].endswith("(") or len(lines[-1]) + len(part) > 92:
            lines.append(f"    {part},")
        else:
            lines[-1] += f" {part},"
    lines.append(")")
    return ["import flamewright as fw", "\n".join(lines), *(f"print(result.{word})" for word in results.split())]


def example(name: str) -> str:
    """An example as a doctest."""
    import io
    from contextlib import redirect_stdout

    lines, names = [], {}
    for statement in source(name):
        first, *more = statement.splitlines()
        lines += [f">>> {first}", *(f"... {line}" for line in more)]
        said = io.StringIO()
        with redirect_stdout(said):
            exec(statement, names)
        lines += said.getvalue().splitlines()
    return "\n".join(lines)


def main() -> None:
    import flamewright as fw

    missing = {e["name"] for e in fw.catalogue()} ^ EXAMPLES.keys()
    failed = [f"no example, or of no calculation: {name}" for name in sorted(missing)]
    made = {}
    for name in EXAMPLES:
        try:
            made[name] = example(name)
        except Exception as why:
            failed.append(f"{name}: {why}")
    if failed:
        raise SystemExit("\n".join(failed))
    head = '"""Examples of every calculation, run by the tests. Written by `write_examples.py`: do not edit."""\n\nEXAMPLES: dict[str, str] = {\n'
    body = "".join(f'    "{name}": """\\\n{text}\n""",\n' for name, text in sorted(made.items()))
    target = Path(__file__).parent / "python" / "flamewright" / "_examples.py"
    target.write_text(head + body + "}\n", encoding="utf-8")


if __name__ == "__main__":
    main()
