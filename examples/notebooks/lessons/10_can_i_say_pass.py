# %% [markdown]
# # 10. Can I say pass?
#
# **You learn** that a reading near a limit is a matter of probability, and that results computed
# from the same readings err together.
#
# **The question.** A boiler shows 8.9 % oxygen and 310 ppm carbon monoxide. Somebody's policy
# allows a CO/CO₂ ratio of at most 0.0047 (**invented** for this lesson: it is nobody's rule). The
# ratio comes out at 0.0046. Pass?
#
# The readings and the instrument's accuracy are **invented** too.
# %%
import flamewright as fw
import flamewright.plot
import numpy as np
from checking import check
from matplotlib import pyplot as plt

LIMIT = 0.0047
measured = {
    "fuel": "G20",
    "oxygen_dry": fw.uncertain("8.9 %", accuracy="0.3 %", resolution="0.1 %"),
    "carbon_monoxide_dry": fw.uncertain("310 ppm", accuracy="20 ppm", resolution="1 ppm"),
    "flue_temperature": fw.uncertain("212 degC", accuracy="2 K"),
    "air_temperature": fw.uncertain("18 degC", accuracy="1 K"),
}
# %% [markdown]
# ## The sum by hand
#
# An accuracy of ±20 ppm, any value in it alike, has a standard uncertainty of 20/√3 ppm. The ratio
# is CO over CO₂; CO₂ comes from oxygen: 11.75 × (1 − 8.9/20.95) = 6.76 %, uncertain by
# 11.75 × (0.3/√3)/20.95 = 0.10 %. Relative uncertainties add in squares:
# %%
ratio = 310e-6 / 0.0676
relative = np.sqrt((20 / np.sqrt(3) / 310) ** 2 + (0.10 / 6.76) ** 2)
print(f"ratio {ratio:.5f}, standard uncertainty {ratio * relative:.5f}")
# %% [markdown]
# ## The library's answer
#
# First the working without uncertainty, then the uncertainty of every result and its budget.
# %%
fw.flue_analysis.steps(fuel="G20", oxygen_dry="8.9 %", carbon_monoxide_dry="310 ppm", flue_temperature="212 degC", air_temperature="18 degC")
# %%
uncertainty = fw.flue_analysis.uncertainty(**measured)
for name in ("carbon_monoxide_ratio", "excess_air_ratio", "efficiency_net"):
    print(f"{name:24}", uncertainty[name])
print("correlation of excess air ratio and efficiency:", round(uncertainty.correlation("excess_air_ratio", "efficiency_net"), 2))
print("correlation of CO ratio and air-free CO:       ", round(uncertainty.correlation("carbon_monoxide_ratio", "carbon_monoxide_air_free"), 3))
# %%
flamewright.plot.budget(uncertainty, ["carbon_monoxide_ratio", "efficiency_net"]);
# %% [markdown]
# ## Monte Carlo
#
# Draw the readings again and again as they might have been, and compute every time.
# %%
draws = fw.flue_analysis.monte_carlo(trials=100_000, seed=2026, **measured)
flamewright.plot.joint(fw.flue_analysis, draws, "carbon_monoxide_ratio", "efficiency_net", at_most={"carbon_monoxide_ratio": str(LIMIT)});
# %%
probability = (draws["carbon_monoxide_ratio"] <= LIMIT).mean()
print(f"probability that the ratio keeps the limit: {100 * probability:.0f} %")
# %% [markdown]
# So: below the limit as a number, but far from sure. A **guard band** says how far below the limit
# a reading must be for a wanted probability; the policy must say which one (95 % here, invented).
# %%
u = uncertainty.standard["carbon_monoxide_ratio"]
readings = np.linspace(0.0040, 0.0053, 27)
conform = []
for wanted in readings:
    scaled = {**measured, "carbon_monoxide_dry": fw.uncertain(f"{310 * wanted / 0.00459:.2f} ppm", accuracy="20 ppm", resolution="1 ppm")}
    conform.append((fw.flue_analysis.monte_carlo(trials=20_000, seed=7, **scaled)["carbon_monoxide_ratio"] <= LIMIT).mean())
guard = float(np.interp(-0.95, -np.array(conform), readings))
fig, ax = plt.subplots(figsize=(7.2, 4.0), layout="constrained")
ax.plot(readings, 100 * np.array(conform), color="black")
ax.axvline(LIMIT, color="black", linestyle="--")
ax.axvline(guard, color="grey", linestyle=":")
ax.axhline(95, color="grey", linestyle=":")
ax.annotate("limit (invented)", (LIMIT, 80), xytext=(5, 0), textcoords="offset points")
ax.annotate(f"guarded limit {guard:.5f}", (guard, 20), xytext=(-5, 0), textcoords="offset points", ha="right", color="grey")
ax.set(xlabel="measured CO/CO$_2$ ratio", ylabel="probability of conformity / %", ylim=(0, 102), title="How sure can I be?")
ax.grid(color="#dddddd");
# %% [markdown]
# Compare the unrounded value with the limit, never the rounded one; and a pass here says nothing
# about spillage, flue flow or ventilation.
#
# ## Your turn
#
# With the same oxygen and instrument, but 290 ppm: what is the probability, in per cent, that the
# ratio keeps 0.0047? (Use `fw.flue_analysis.monte_carlo` as above.)
# %%
answer = None  # a number, in per cent
# %%
lower = {**measured, "carbon_monoxide_dry": fw.uncertain("290 ppm", accuracy="20 ppm", resolution="1 ppm")}
check(answer, 100 * (fw.flue_analysis.monte_carlo(trials=100_000, seed=2026, **lower)["carbon_monoxide_ratio"] <= LIMIT).mean());
# %% [markdown]
# ## Cautions
# %%
print("\n".join(fw.flue_analysis.info["cautions"]))
