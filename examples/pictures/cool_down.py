"""Draws `cool_down.png` beside this file. The plant is invented."""

from pathlib import Path

import matplotlib

matplotlib.use("Agg")

import flamewright.plot

axes = flamewright.plot.cool_down(
    first="radiators closed",
    second="radiators opened",
    metal_mass="105 kg",
    water_content="11 L",
    casing_loss="12 W/K",
    pump_flow="0.25 kg/s",
    flow_length="9 m",
    return_length="9 m",
    pipe_heat_capacity="1900 J/(m K)",
    pipe_loss="0.9 W/(m K)",
    room_temperature="18 degC",
    block_temperature="82 degC",
    circuit_temperature="70 degC",
    target_temperature="60 degC",
    thresholds=[
        {"name": "overrun thermostat opens", "temperature": "60 degC"},
        {"name": "a hand can rest on it", "temperature": "50 degC"},
        {"name": "drain", "temperature": "40 degC"},
    ],
    circuits=[
        {
            "name": "radiators",
            "opening": "opened_after",
            "flow_length": "20 m",
            "return_length": "20 m",
            "pipe_heat_capacity": "800 J/(m K)",
            "pipe_loss": "0.8 W/(m K)",
            "emitter_output": "6000 W",
            "emitter_heat_capacity": "90 kJ/K",
            "circuit_temperature": "18 degC",
        }
    ],
)
axes.set_title("An invented cast-iron boiler cooling down, pump running", loc="left", fontsize=11)
axes.figure.savefig(Path(__file__).with_suffix(".png"), dpi=100)
