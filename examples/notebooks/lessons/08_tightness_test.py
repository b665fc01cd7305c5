# %% [markdown]
# # 8. Tightness test
#
# **You learn** what a falling gauge says about a leak, what it cannot say, and what a change of
# temperature does to it.
#
# **The question.** An installation of 16.3 L is tested at 20 mbar. In 2 minutes the gauge falls by
# 0.5 mbar. How big is the leak? And what if the gas had warmed by 0.1 K meanwhile?
#
# The installation and readings are **invented**. Which drop or leak is allowed is a matter of
# your national procedure; this lesson judges nothing.
# %%
import flamewright as fw
import flamewright.plot
import numpy as np
from checking import check
from matplotlib import pyplot as plt

test = {"installation_volume": "16.3 L", "test_pressure": "20 mbar", "pressure_drop": "0.5 mbar", "test_duration": "2 min"}
# %% [markdown]
# ## The sum by hand
#
# Boyle: the gas lost, measured at about atmospheric pressure, is volume × drop / atmospheric
# pressure.
# %%
lost = 16.3 * 0.5 / 1013.25  # L
print(f"lost {1000 * lost:.1f} mL in 2 minutes, {lost / 2 * 60:.3f} L/h")
# %% [markdown]
# ## The library's answer, with its working
# %%
fw.tightness_test.steps(readable_movement="0.25 mbar", **test)
# %%
steady = fw.tightness_test(readable_movement="0.25 mbar", **test)
steady
# %% [markdown]
# ## A tenth of a kelvin
#
# The gas law works on **absolute** pressure: 1033 mbar, not 20. One kelvin moves the gauge by
# 1033/288 = 3.6 mbar. A tenth of a kelvin hides, or feigns, 0.36 mbar.
# %%
warmed = fw.tightness_test(temperature_rise="0.1 K", **test)
print("gas steady:       ", steady.leak_rate)
print("gas warmed 0.1 K: ", warmed.leak_rate)
print(*warmed.notices, sep="\n")
# %%
flamewright.plot.gauge_drift(temperature_change="0.5 K", minutes=5, **test);
# %% [markdown]
# A tight installation whose gas cools looks like a leak, and a leak whose gas warms looks tight.
# Let the temperature settle, and test again when in doubt.
#
# ## The smallest leak you can see
#
# "No movement" means: none that I could read. The longer the test and the smaller the volume, the
# smaller the leak that shows.
# %%
minutes = np.linspace(1, 15, 100)
fig, ax = plt.subplots(figsize=(7.2, 4.0), layout="constrained")
for litres, style in ((10, "-"), (25, "--"), (60, "-.")):
    plan = fw.tightness_plan(installation_volume=f"{litres} L", readable_movement="0.25 mbar", test_duration=(minutes, "min"))
    leak = plan.smallest_detectable_leak.magnitude
    ax.plot(minutes, leak, color="black", linestyle=style)
    ax.annotate(f"{litres} L", (3, np.interp(3, minutes, leak)), xytext=(6, 4), textcoords="offset points")
ax.set(xlabel="test time / min", ylabel="smallest detectable leak / (L/h)", title="A gauge read to 0.25 mbar", yscale="log", xlim=(1, 15))
ax.yaxis.set_major_formatter("{x:g}")
ax.grid(color="#dddddd", which="both");
# %% [markdown]
# ## Your turn
#
# An installation of 30 L drops by 1.0 mbar in 2 minutes, gas steady. How big is the leak in L/h?
# %%
answer = None  # a number, in L/h
# %%
check(answer, fw.tightness_test(**{**test, "installation_volume": "30 L", "pressure_drop": "1 mbar"}).leak_rate.to("L/h"), within=0.02);
# %% [markdown]
# ## Cautions
# %%
print("\n".join(steady.cautions))
