# %% [markdown]
# # 9. Sensors
#
# **You learn** to check a platinum thermometer, a thermistor and a thermocouple with a multimeter.
#
# **The questions.** A Pt1000 reads 1232 Ω through leads of 1 Ω: how hot is it? A 10 kΩ thermistor
# reads 2500 Ω: how hot, and does it matter which curve is used? A type K probe gives 7.5 mV at a
# meter of 22 °C: how hot?
#
# The readings are **invented**; the platinum and thermocouple curves are those of the standards.
# %%
import flamewright as fw
import numpy as np
from checking import check
from matplotlib import pyplot as plt

# %% [markdown]
# ## The sums by hand
#
# Platinum: about 0.385 % per kelvin of its resistance at 0 °C. Thermistor by Beta:
# 1/T = 1/T₀ + ln(R/R₀)/β. Thermocouple: about 0.041 mV per kelvin, **plus** the cold junction.
# %%
platinum = (1231 / 1000 - 1) / 0.00385  # degC
thermistor = 1 / (1 / 298.15 + np.log(2500 / 10000) / 3977) - 273.15  # degC
thermocouple = 7.5 / 0.041 + 22  # degC
print(f"{platinum:.1f} °C, {thermistor:.1f} °C, {thermocouple:.0f} °C")
# %% [markdown]
# ## The library's answers, with the working
# %%
fw.platinum_temperature.steps(resistance="1232 ohm", resistance_at_zero="1000 ohm", lead_resistance="1 ohm")
# %%
print(fw.platinum_temperature(resistance="1232 ohm", resistance_at_zero="1000 ohm", lead_resistance="1 ohm"))
print()
print(fw.thermistor_temperature(curve="beta", reference_resistance="10 kohm", beta="3977 K", resistance="2500 ohm"))
print()
couple = fw.thermocouple_temperature(voltage="7.5 mV", reference_junction_temperature="22 degC")
print(couple)
# %% [markdown]
# The slope of 0.041 mV/K is only near the truth: by the standard's table the probe is not at
# 205 °C but at 206 °C. Forgetting the cold junction altogether costs more than 20 K.
#
# ## Resistance against temperature
# %%
celsius = np.linspace(0, 100, 201)
kelvin = celsius + 273.15
platinum = fw.platinum_resistance(temperature=(celsius, "degC"), resistance_at_zero="1000 ohm").resistance.magnitude
ntc = 10000 * np.exp(3977 * (1 / kelvin - 1 / 298.15))
fig, ax = plt.subplots(figsize=(7.2, 3.8), layout="constrained")
ax.semilogy(celsius, platinum, color="black")
ax.semilogy(celsius, ntc, color="black", linestyle="--")
ax.annotate("Pt1000", (80, 1300), xytext=(0, 8), textcoords="offset points")
ax.annotate("thermistor, 10 kΩ at 25 °C", (30, 8300), xytext=(8, 6), textcoords="offset points")
ax.yaxis.set_major_formatter("{x:g}")
ax.set(xlabel="temperature / °C", ylabel="resistance / Ω", title="One rises a little, the other falls a lot", xlim=(0, 100))
ax.grid(color="#dddddd", which="both");
# %% [markdown]
# ## Beta against Steinhart-Hart
#
# Beta is a curve through one point with one slope. Three points fix a better one (Steinhart and
# Hart). Take the three-point curve for the truth and look at what Beta gets wrong.
# %%
points = {
    "first_resistance": "32650 ohm", "first_temperature": "0 degC",
    "second_resistance": "10000 ohm", "second_temperature": "25 degC",
    "third_resistance": "1256 ohm", "third_temperature": "80 degC",
}  # fmt: skip
resistance = np.geomspace(700, 32000, 200)
better = fw.thermistor_fit(resistance=(resistance, "ohm"), **points).temperature.magnitude
fig, ax = plt.subplots(figsize=(7.2, 3.8), layout="constrained")
for beta, style in ((3977, "-"), (3435, "--")):
    simple = fw.thermistor_temperature(curve="beta", reference_resistance="10 kohm", beta=f"{beta} K", resistance=(resistance, "ohm")).temperature.magnitude
    ax.plot(better, simple - better, color="black", linestyle=style)
    ax.annotate(f"β = {beta} K", (70, np.interp(70, better[::-1], (simple - better)[::-1])), xytext=(-8, 9), textcoords="offset points", ha="right")
ax.axhline(0, color="grey", linewidth=0.7)
ax.set(xlabel="temperature by the three-point curve / °C", ylabel="error of the Beta curve / K", title="The right Beta errs by tenths, the wrong curve by many kelvin")
ax.grid(color="#dddddd");
# %% [markdown]
# ## The cold junction
# %%
junction = np.linspace(0, 40, 81)
right = fw.thermocouple_temperature(voltage="7.5 mV", reference_junction_temperature=(junction, "degC")).temperature.magnitude
ignored = fw.thermocouple_temperature(voltage="7.5 mV", reference_junction_temperature="0 degC").temperature.magnitude
fig, ax = plt.subplots(figsize=(7.2, 3.2), layout="constrained")
ax.plot(junction, ignored - right, color="black")
ax.set(xlabel="temperature of the cold junction / °C", ylabel="error / K", title="What ignoring the cold junction costs")
ax.grid(color="#dddddd");
# %% [markdown]
# ## Your turn
#
# A Pt100 (100 Ω at 0 °C) reads 123.9 Ω through leads of 0.4 Ω. How hot is it, in °C?
# %%
answer = None  # a number, in degrees Celsius
# %%
check(answer, fw.platinum_temperature(resistance="123.9 ohm", resistance_at_zero="100 ohm", lead_resistance="0.4 ohm").temperature.to("degC"), within=0.005);
# %% [markdown]
# ## Cautions
#
# A sensor that reads wrong may hide a boiler that is too hot. Do not lift a limit thermostat, a
# flame supervision or a spillage device off its place to get a reading.
# %%
print("\n".join(couple.cautions or ["The library has no further cautions for this calculation."]))
