# %% [markdown]
# # 6. The thermostat
#
# **You learn** to read a switching test, and how the differential sets the number of burner starts.
#
# **The question.** A control thermostat set to 82 °C switched off at 81.8, 82.1 and 81.6 °C and on
# at 74.1, 74.4 and 74.0 °C. What is its differential, does it repeat, and how often will the
# burner start?
#
# The readings and the boiler are **invented**.
# %%
import flamewright as fw
import numpy as np
from checking import check
from matplotlib import pyplot as plt

test = {
    "set_point": "82 degC",
    "cut_outs": ["81.8 degC", "82.1 degC", "81.6 degC"],
    "cut_ins": ["74.1 degC", "74.4 degC", "74.0 degC"],
}
# %% [markdown]
# ## The sum by hand
#
# The mean of the three readings at which it switched off, less the mean of those at which it
# switched on, is the differential. How far the three differ says how well it repeats:
# %%
off, on = np.array([81.8, 82.1, 81.6]), np.array([74.1, 74.4, 74.0])
print(f"off {off.mean():.2f} °C, on {on.mean():.2f} °C, differential {off.mean() - on.mean():.2f} K")
print(f"off within {np.ptp(off):.1f} K, on within {np.ptp(on):.1f} K")
# %% [markdown]
# ## The library's answer, with its working
# %%
fw.thermostat_test.steps(**test)
# %%
thermostat = fw.thermostat_test(**test)
thermostat
# %% [markdown]
# ## How often does the burner start?
#
# Heat the block and its water (98 kJ/K) with 24 kW while the system takes 8 kW: 16 kW are left to
# warm it. On: C·Δt/16 kW; off: C·Δt/8 kW.
# %%
capacity, burner, load, differential = 98.0, 24.0, 8.0, 7.67  # kJ/K, kW, kW, K
on_time, off_time = capacity * differential / (burner - load), capacity * differential / load
print(f"on {on_time:.0f} s, off {off_time:.0f} s, {3600 / (on_time + off_time):.1f} starts per hour")
# %%
plant = {"heat_capacity": "98 kJ/K", "burner_output": "24 kW", "load": "8 kW"}
cycling = fw.burner_cycling(cut_out_temperature=thermostat.cut_out, cut_in_temperature=thermostat.cut_in, **plant)
cycling
# %% [markdown]
# ## Temperature against time
#
# With the load steady the temperature runs in straight lines between the two switching points.
# %%
period = cycling.period.to("min")
times, temperatures = [0.0], [thermostat.cut_in.magnitude]
for _ in range(4):
    times += [times[-1] + cycling.on_time.to("min"), times[-1] + period]
    temperatures += [thermostat.cut_out.magnitude, thermostat.cut_in.magnitude]
fig, ax = plt.subplots(figsize=(7.2, 3.8), layout="constrained")
ax.plot(times, temperatures, color="black")
for n in range(4):
    ax.axvspan(times[2 * n], times[2 * n + 1], color="#dddddd")
    ax.annotate("burner\non", ((times[2 * n] + times[2 * n + 1]) / 2, 83.1), ha="center", va="center", fontsize=9)
for value, word in ((thermostat.cut_out, "off"), (thermostat.cut_in, "on")):
    ax.axhline(value.magnitude, color="grey", linestyle=":")
    ax.annotate(f"{word}: {value}", (times[-1], value.magnitude), xytext=(6, -3), textcoords="offset points", annotation_clip=False)
ax.set(xlabel="time / min", ylabel="block temperature / °C", title="Four cycles", xlim=(0, times[-1]), ylim=(73, 84.2));
# %% [markdown]
# ## Starts against differential
# %%
kelvin = np.linspace(2, 15, 100)
fig, ax = plt.subplots(figsize=(7.2, 3.8), layout="constrained")
for litres, style in ((11, "-"), (50, "--")):
    heat = fw.heat_store(start_temperature="82 degC", end_temperature="74 degC", cast_iron_mass="105 kg", water_content=f"{litres} L").heat_capacity
    starts = fw.burner_cycling(
        cut_out_temperature="82 degC", cut_in_temperature=(82 - kelvin, "degC"), **{**plant, "heat_capacity": heat}
    ).start_rate.magnitude
    ax.plot(kelvin, starts, color="black", linestyle=style)
    ax.annotate(f"{litres} L of water", (4, np.interp(4, kelvin, starts)), xytext=(10, 4), textcoords="offset points")
ax.axvline(thermostat.differential.magnitude, color="grey", linestyle=":")
ax.annotate("this thermostat", (thermostat.differential.magnitude, 0.88 * starts.max()), xytext=(4, 0), textcoords="offset points", color="grey")
ax.set(xlabel="differential / K", ylabel="burner starts per hour", title="Narrow differential, many starts", ylim=(0, None))
ax.grid(color="#dddddd");
# %% [markdown]
# A control thermostat runs the boiler. The **limit** thermostat protects it, and is a different
# thing: never use one for the other, and never bridge either to get a reading.
#
# ## Your turn
#
# How many starts per hour does the 98 kJ/K boiler make with a differential of 5 K
# (off at 82 °C, on at 77 °C)?
# %%
answer = None  # a number, starts per hour
# %%
check(answer, fw.burner_cycling(cut_out_temperature="82 degC", cut_in_temperature="77 degC", **plant).start_rate.to("1/h"));
# %% [markdown]
# ## Cautions
# %%
print("\n".join([*thermostat.cautions, *cycling.cautions]))
