"""Writes `python/flamewright/_examples.py`: the examples that `help()` shows, with what they print.

`python write_examples.py` (Python 3.11 or later) takes what is given from
`crates/flamewright/examples.toml`, runs every example on the installed package and writes its output
beside it; the tests run them all again.
"""

from __future__ import annotations

import io
import json
import tomllib
from contextlib import redirect_stdout
from pathlib import Path
from typing import Any

from flamewright._calculation import argument

GIVEN: dict[str, dict[str, Any]] = tomllib.loads((Path(__file__).parents[2] / "crates/flamewright/examples.toml").read_text(encoding="utf-8"))

#: By calculation, the results to show; without an entry, the first three.
RESULTS = {
    "absolute_pressure": "absolute_pressure",
    "altitude": "barometric_pressure heat_input_ratio",
    "analyser_reading": "accuracy standard_uncertainty",
    "antifreeze_dose": "glycol_mass_fraction product_volume",
    "antifreeze_mixture": "freezing_temperature density specific_heat_capacity",
    "atmospheric_pressure": "standard_pressure",
    "block_cool_down": "time time_constant",
    "boiling_point": "boiling_point margin",
    "burner_cycling": "on_time off_time start_rate",
    "burner_pressure": "pressure_for_wanted",
    "carbon_monoxide": "carbon_monoxide_ratio carbon_monoxide_air_free_from_carbon_dioxide",
    "chimney_draught": "mean_flue_temperature outlet_temperature velocity",
    "circuit_balance": "index_pressure_drop greatest_velocity",
    "circuit_cycling": "on_time off_time start_rate",
    "combustion_air_flow": "gas_rate air_flow",
    "combustion_products": "wet_flue oxygen_dry carbon_dioxide_dry water_dew_point",
    "cool_down": "time heat_released",
    "cool_down_fit": "time_constant loss_conductance",
    "critical_radius": "critical_radius loss_ratio",
    "dry_air": "density thermal_conductivity kinematic_viscosity",
    "duty_point": "volume_flow pressure",
    "emitter_at_flow": "return_temperature heat_output",
    "emitter_output": "heat_output output_factor",
    "expansion_vessel": "expansion_volume pre_charge vessel_volume",
    "fitting_loss": "loss_coefficient equivalent_length",
    "flame_supervision_voltage": "holding_ratio holding_margin",
    "flame_temperature": "flame_temperature flame_temperature_complete",
    "flow_from_heat": "mass_flow volume_flow_at_return",
    "flue_analysis": "excess_air carbon_monoxide_ratio flue_loss_net efficiency_net",
    "flue_emissions": "carbon_monoxide_at_reference carbon_monoxide_air_free",
    "flue_flow": "mass_flow pressure_loss",
    "flue_gas_flow": "mass_flow volume_flow dew_point",
    "friction_factor": "friction_factor turbulent_friction_factor",
    "fuel_properties": "gross_calorific_value net_calorific_value gross_wobbe_index relative_density",
    "gas_energy": "reference_volume energy_gross",
    "gas_enthalpy": "carbon_dioxide water_vapour nitrogen",
    "gas_installation": "gas_flow greatest_drop pipe_volume",
    "gas_pipe_discharge": "gas_flow_low heat_input_gross",
    "gas_pipe_drop": "gas_flow velocity drop_at_inlet_density_low",
    "gas_pipe_sizing": "greatest_drop spare_drop widest_bore",
    "gas_properties": "gross_calorific_value relative_density gross_wobbe_index",
    "gas_rate": "gas_rate conversion_factor heat_input_net share_of_plate_net",
    "gas_rate_test_time": "gas_rate time_for_uncertainty",
    "gas_rate_uncertainty": "heat_input_gross expanded_uncertainty share_of_meter",
    "heat_from_flow": "heat_output",
    "heat_store": "heat_capacity heat",
    "humid_air": "dew_point humidity_ratio density",
    "inclined_gauge": "level_difference pressure",
    "inhibitor_dose": "dose containers",
    "injector_flow": "gas_flow heat_input_gross",
    "injector_size": "injector_diameter",
    "installation_volume": "pipe_volume installation_volume",
    "leak_class": "class_number class_from class_below",
    "leak_scaling": "leak_rate_laminar leak_rate_orifice",
    "let_by": "let_by_rate smallest_detectable_flow",
    "liquid_column": "pressure",
    "liquid_water": "density specific_heat_capacity dynamic_viscosity",
    "local_gravity": "gravity",
    "mass_concentration": "mass_concentration",
    "material_properties": "thermal_conductivity density",
    "metering_reference_change": "volume_ratio gross_calorific_value",
    "natural_draught": "draught reversal_outdoor_temperature",
    "opening_flow": "air_flow equivalent_area",
    "opening_size": "free_area",
    "overshoot": "peak_with_pump_stopped peak_with_pump_running margin_with_pump_stopped",
    "partial_drain": "product_lost product_needed",
    "pipe_cool_down": "time_to_target heat_loss_at_start",
    "pipe_heat_loss": "heat_loss_per_length surface_temperature",
    "pipe_temperature_drop": "outlet_temperature heat_loss",
    "platinum_resistance": "resistance tolerance",
    "platinum_temperature": "temperature lead_error",
    "pump_overrun": "stop_time heat_left",
    "purge": "purge_volume purge_time",
    "purge_velocity": "purge_flow travel_time",
    "room_concentration": "concentration steady",
    "saturated_water": "saturation_pressure heat_of_vaporisation",
    "siegert_constants": "a2 b largest_deviation",
    "siegert_flue_loss": "flue_loss_net efficiency_net",
    "static_head": "static_pressure",
    "system_content": "pipe_content system_content",
    "thermistor_beta": "temperature",
    "thermistor_beta_of_points": "beta",
    "thermistor_check": "lowest_resistance highest_resistance indicated_temperature",
    "thermistor_fit": "temperature",
    "thermistor_temperature": "temperature sensitivity",
    "thermocouple_temperature": "temperature addition_error",
    "thermocouple_voltage": "voltage seebeck_coefficient",
    "thermostat_differential": "differential mid_point",
    "thermostat_test": "differential offset cut_out_repeatability",
    "tightness_plan": "time_needed temperature_sensitivity",
    "tightness_test": "leak_rate temperature_sensitivity",
    "touch_wait": "wait",
    "tube_run": "bore content mass",
    "u_gauge": "level_difference pressure",
    "valve_kv": "valve_kv",
    "vent_free_area": "overall_area free_area free_share",
    "ventilation_need": "rating_above_threshold free_area",
    "vessel_check": "hot_pressure take_up",
    "volume_fraction": "fraction",
    "warm_up": "time heat_put_in",
    "water_pressure_drop": "velocity pressure_drop",
    "wobbe_index": "gross_wobbe_index",
}


def source(name: str) -> list[str]:
    """The statements of an example; lines within a statement are continued."""
    import flamewright as fw

    lines = [f"result = fw.{name}("]
    for word, value in GIVEN[name].items():
        text = json.dumps(value, ensure_ascii=False).replace("true", "True").replace("false", "False")
        part = f"{argument(word)}={text},"
        if lines[-1].endswith("(") or len(lines[-1]) + len(part) > 92:
            lines.append(f"    {part}")
        else:
            lines[-1] += f" {part}"
    lines.append(")")
    outputs = [f for f, field in fw.calculation(name).output_fields.items() if not field["detail"]]
    results = RESULTS[name].split() if name in RESULTS else outputs[:3]
    return ["import flamewright as fw", "\n".join(lines), *(f"print(result.{argument(word)})" for word in results)]


def example(name: str) -> str:
    """An example as a doctest."""
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

    missing = {e["name"] for e in fw.catalogue()} ^ GIVEN.keys()
    failed = [f"no example, or of no calculation: {name}" for name in sorted(missing)]
    made = {}
    for name in GIVEN:
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
