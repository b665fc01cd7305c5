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
goal = fw.liquid_water.goal_seek(of="density", wanted="983 kg/m3", vary="temperature", low="10 degC", high="90 degC")
page: str = fw.assess("title = 'x'").to_html()
found: fw.Value = goal.result.density
swept: fw.Value = fw.liquid_water.sweep({"temperature": ("10 degC", "90 degC")}).result.prandtl_number
shown: fw.Value = fw.liquid_water(temperature="60 degC").in_units("SI", density="g/cm3").density
bare: fw.Value = fw.liquid_water.evaluate(temperature=333.15).density
by_name: float = fw.evaluate("liquid_water", temperature=333.15)["density"].si
words: str = f"{shown:.2f}" + fw.liquid_water(temperature="60 degC").notices[0]
tenth: float = fw.liquid_water.fixed()(temperature=333.15).density
try:
    fw.calculation("liquid_water")(temperature="-1 degC")
except fw.Error as refusal:
    limit: float | None = refusal.minimum
laid: fw.LaidOver = fw.liquid_water.over([], units={"temperature": "degC"}, outputs=["density"], keep=False)
