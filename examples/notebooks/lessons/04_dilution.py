# %% [markdown]
# # 4. Dilution
#
# **You learn** which figures survive when room air gets into the sample, and which do not.
#
# **The question.** One burner is sampled in the primary flue, after the draught diverter, and with
# a probe that leaks. Three different sets of readings: has the combustion changed?
#
# The burner is **invented**: 5.0 % oxygen, 80 ppm carbon monoxide, 180 °C undiluted.
# %%
import flamewright as fw
import numpy as np
from checking import check
from matplotlib import pyplot as plt

true = {"oxygen": 5.0, "monoxide": 80.0, "temperature": 180.0}
air_temperature = 18.0
# %% [markdown]
# ## The sum by hand
#
# Mix one part of dry flue gas with *d* parts of room air. Oxygen moves towards 20.95 %, carbon
# monoxide and carbon dioxide are divided by 1 + *d*. Their **ratio** stays. The temperature of
# the mixture falls too (here as if both had one heat capacity: good enough to see it).
# %%
def sampled(d):
    mix = lambda flue, air: (flue + d * air) / (1 + d)
    return mix(true["oxygen"], 20.95), mix(true["monoxide"], 0.0), mix(true["temperature"], air_temperature)


for d in (0.0, 0.2, 0.5, 1.0):
    print("{0} parts of air: O2 {1:.1f} %, CO {2:.0f} ppm, {3:.0f} °C".format(d, *sampled(d)))
# %% [markdown]
# ## The library's answer
# %%
dilution = np.linspace(0, 2, 101)
oxygen, monoxide, temperature = sampled(dilution)
seen = fw.flue_analysis(
    fuel="G20",
    oxygen_dry=(oxygen, "%"),
    carbon_monoxide_dry=(monoxide, "ppm"),
    flue_temperature=(temperature, "degC"),
    air_temperature=f"{air_temperature} degC",
)
# A leak in the sample line draws air past the thermocouple: the temperature stays.
leaking = fw.flue_analysis(
    fuel="G20",
    oxygen_dry=(oxygen, "%"),
    carbon_monoxide_dry=(monoxide, "ppm"),
    flue_temperature=f"{true['temperature']} degC",
    air_temperature=f"{air_temperature} degC",
)
for place, d in (("primary flue", 0.0), ("leaking probe", 0.2), ("after the diverter", 1.0)):
    i = int(np.argmin(abs(dilution - d)))
    print(
        f"{place:20} O2 {oxygen[i]:5.1f} %  CO {monoxide[i]:4.0f} ppm  ratio {seen.carbon_monoxide_ratio.magnitude[i]:.5f}  "
        f"air-free CO {seen.carbon_monoxide_air_free.magnitude[i]:5.1f} ppm  excess air {seen.excess_air.magnitude[i]:4.0f} %"
    )
# %% [markdown]
# The working of the undiluted sample:
# %%
fw.flue_analysis.steps(fuel="G20", oxygen_dry="5.0 %", carbon_monoxide_dry="80 ppm", flue_temperature="180 degC", air_temperature="18 degC")
# %%
fig, ax = plt.subplots(figsize=(7.2, 4.4), layout="constrained")
lines = (
    ("O$_2$ as read", oxygen, (0, (6, 2, 1, 2, 1, 2)), 0),
    ("excess air ratio", seen.excess_air_ratio.magnitude, "-.", 0),
    ("net efficiency,\nall of it mixed", seen.efficiency_net.magnitude, (0, (8, 3)), 13),
    ("net efficiency,\nleaking sample line", leaking.efficiency_net.magnitude, ":", -12),
    ("CO as read", monoxide, "--", -8),
)
for name, values, style, up in lines:
    relative = values / values[0]
    ax.plot(dilution, relative, color="black", linestyle=style, linewidth=1.6)
    ax.annotate(name, (2, relative[-1]), xytext=(6, up), textcoords="offset points", fontsize=9, va="center", annotation_clip=False)
# Two that lie on each other: one wide grey line, one thin black one.
for values, colour, width in ((seen.carbon_monoxide_ratio.magnitude, "#bbbbbb", 6), (seen.carbon_monoxide_air_free.magnitude, "black", 1.2)):
    ax.plot(dilution, values / values[0], color=colour, linewidth=width, zorder=0.5)
ax.annotate("CO/CO$_2$ ratio (wide) and air-free CO (thin): flat", (0.35, 1.0), xytext=(0, 7), textcoords="offset points", fontsize=9)
ax.set(xlabel="parts of room air to one part of dry flue gas", ylabel="reading relative to the undiluted one", xlim=(0, 2), ylim=(0, 3.6), title="What dilution changes, and what it does not")
ax.grid(color="#dddddd");
# %% [markdown]
# The ratio and the air-free value are flat: they speak of the flame. Oxygen, excess air and the
# CO reading speak of the sample. The efficiency hardly moves where air and flue gas are mixed before
# the thermocouple, because the heat is only spread over more gas; with a leak in the sample line
# the temperature stays, and the efficiency comes out wrong.
# %% [markdown]
# ## Your turn
#
# A sample shows 12.9 % oxygen and 40 ppm carbon monoxide. What is the carbon monoxide free of
# air, in ppm? (By hand: times 20.95 over 20.95 less the oxygen.)
# %%
answer = None  # a number, in ppm
# %%
diluted = fw.flue_analysis(fuel="G20", oxygen_dry="12.9 %", carbon_monoxide_dry="40 ppm", flue_temperature="100 degC", air_temperature="18 degC")
check(answer, diluted.carbon_monoxide_air_free.to("ppm"));
# %% [markdown]
# ## Cautions
# %%
print("\n".join(diluted.cautions))
