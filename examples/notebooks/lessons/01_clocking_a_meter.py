# %% [markdown]
# # 1. Clocking a meter
#
# **You learn** to turn a volume and a stopwatch time into a gas rate and a heat input, to correct
# for pressure and temperature, and to say how good the answer is.
#
# **The question.** A meter passes 0.100 m³ in 2 min 4.6 s with only the boiler running. The gas is
# natural gas (test gas G20 stands for it), 20.3 mbar at the meter and 9 °C; the barometer reads
# 1004 mbar. The plate says 28.0 kW net. Is the boiler on its rate?
#
# All readings in this lesson are **invented**.
# %%
import flamewright as fw
import numpy as np
from checking import check
from matplotlib import pyplot as plt

reading = {
    "fuel": "G20",
    "volume": "0.100 m3",
    "time": "2 min 4.6 s",
    "gas_pressure": "20.3 mbar",
    "gas_temperature": "9 degC",
    "barometric_pressure": "1004 mbar",
}
# %% [markdown]
# ## The sum by hand
#
# Rate = volume over time. The meter sees gas at its own pressure and temperature, but the
# calorific value belongs to 15 °C and 1013.25 mbar, so the rate is multiplied by the pressure
# ratio (absolute!) and by the temperature ratio (in kelvin!):
# %%
rate = 0.100 / 124.6 * 3600  # m3/h
factor = (1004 + 20.3) / 1013.25 * (273.15 + 15) / (273.15 + 9)
net_calorific_value = 34.01  # MJ/m3, G20, 15/15 degC
print(f"rate {rate:.3f} m³/h, factor {factor:.4f}, heat input {rate * factor * net_calorific_value / 3.6:.2f} kW net")
# %% [markdown]
# ## The library's answer, with its working
# %%
fw.gas_rate.steps(**reading)
# %%
rate = fw.gas_rate(plate_heat_input_net="28.0 kW", **reading)
rate
# %% [markdown]
# The answer to the question: 28.2 kW net, 100.7 % of the plate, so the boiler is on its rate. Gross
# and net are two different things: 28.2 kW net is 31.3 kW gross. The plate is net, so the net figure
# is compared with it. Without the correction the sum would have been 3 % low.
#
# ## How good is it?
#
# The meter shows steps of 0.001 m³; a thumb on a stopwatch is good for about 0.15 s; the meter
# may be 2 % wrong. The longer the test, the less the step and the thumb matter. What the meter's
# own error does, no test time mends.
# %%
seconds = np.linspace(15, 600, 200)
flow = 0.100 / 124.6  # m3/s
fig, ax = plt.subplots(figsize=(7.2, 4.2), layout="constrained")
for resolution, style in (("0.001 m3", "-"), ("0.01 m3", "--")):
    u = fw.gas_rate_uncertainty(
        volume=(flow * seconds, "m3"),
        time=(seconds, "s"),
        meter_resolution=resolution,
        maximum_permissible_error="2 %",  # invented, as an instrument's data sheet might say
        gross_calorific_value="37.78 MJ/m3",
    )
    percent = u.relative_uncertainty.magnitude
    ax.plot(seconds, percent, color="black", linestyle=style)
    ax.annotate(f"index step {resolution.replace('m3', 'm³')}", (140, np.interp(140, seconds, percent)), xytext=(8, 6), textcoords="offset points")
ax.axvline(124.6, color="grey", linestyle=":")
ax.annotate("this test", (124.6, 6.2), xytext=(4, 0), textcoords="offset points", color="grey")
ax.set(xlabel="test time / s", ylabel="standard uncertainty of the heat input / %", ylim=(0, 7), xlim=(0, 600), title="A longer test is a better test")
ax.grid(color="#dddddd");
# %% [markdown]
# ## A dial in cubic feet
#
# On an imperial meter you count turns of the test dial. The size of the dial must be read off the
# meter: take a 2 ft³ dial for a 1 ft³ one and the answer doubles. That is why it has no default.
# %%
conditions = {k: v for k, v in reading.items() if k not in ("volume", "time")}
by_dial = {dial: fw.gas_rate(dial_volume=dial, revolutions="2", time="80 s", **conditions).heat_input_net for dial in ("1 ft3", "2 ft3", "5 ft3")}
by_dial
# %%
fig, ax = plt.subplots(figsize=(7.2, 2.4), layout="constrained")
ax.barh([dial.replace("ft3", "ft³") for dial in by_dial], [v.to("kW") for v in by_dial.values()], color="#bbbbbb", edgecolor="black", hatch="//")
ax.set(xlabel="heat input, net / kW", ylabel="test dial", title="The same count and time, three dials");
# %% [markdown]
# ## Your turn
#
# The same boiler on a day when the barometer reads 985 mbar and the gas is at 2 °C needs 2 min 3 s
# for 0.100 m³. What is its net heat input in kW?
# %%
answer = None  # a number, in kW
# %%
right = fw.gas_rate(**{**reading, "barometric_pressure": "985 mbar", "gas_temperature": "2 degC", "time": "2 min 3 s"})
check(answer, right.heat_input_net.to("kW"));
# %% [markdown]
# ## Cautions
#
# These go with every result of this lesson, the small ones too:
# %%
print("\n".join(rate.cautions))
