"""What a type checker must accept."""

import flamewright as fw
import numpy as np

water: fw.Value = fw.liquid_water(temperature="60 degC").density
column = fw.liquid_water(temperature=(np.linspace(10.0, 90.0, 5), "degC"), pressure="2 bar").density.magnitude
flue = fw.flue_analysis(
    fuel={"methane": "92 %", "ethane": "8 %"},
    oxygen_dry=fw.uncertain("5 %", accuracy="0.3 %"),
    carbon_monoxide_dry="30 ppm",
    flue_temperature=fw.evaluate("liquid_water", temperature=333.15)["density"],
    air_temperature="18 degC",
)
resistance = fw.platinum_resistance(temperature="50 degC", resistance_at_zero="100 ohm", class_="A").resistance
goal: fw.Goal = fw.liquid_water.goal_seek(of="density", wanted="983 kg/m3", vary="temperature", low="10 degC", high="90 degC")
page: str = fw.assess("title = 'x'").to_html()
