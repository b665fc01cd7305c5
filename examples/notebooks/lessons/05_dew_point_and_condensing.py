# %% [markdown]
# # 5. Dew point and condensing
#
# **You learn** when the water in the flue gas condenses, and what that is worth.
#
# **The question.** A condensing boiler runs with 5 % oxygen in its flue gas, which leaves 5 K
# above the return water. What does lowering the return from 60 to 30 °C bring?
#
# The boiler and its 5 K are **invented**.
# %%
import flamewright as fw
import flamewright.plot
import numpy as np
from checking import check
from matplotlib import pyplot as plt

boiler = {"fuel": "G20", "oxygen_dry": "5 %", "carbon_monoxide_dry": "20 ppm", "air_temperature": "18 degC"}
# %% [markdown]
# ## The sum by hand
#
# One volume of methane makes 2 volumes of water vapour in 8.55 volumes of dry flue gas, plus the
# excess air. At an excess air ratio of 1.28 the wet flue gas has 2 in 13.2 parts of water:
# %%
share = 2 / (2 + 8.547 + 0.28 * 9.547)
vapour_pressure = share * 1013.25  # mbar
print(f"{100 * share:.1f} % water, {vapour_pressure:.0f} mbar")
# %% [markdown]
# Steam tables say that water boils at 54 °C under 153 mbar. That is the dew point: colder surfaces
# get wet. The library's formula for steam says the same:
# %%
print(f"{fw.saturated_water(temperature='54.4 degC').saturation_pressure.to('mbar'):.1f} mbar")
# %% [markdown]
# ## The library's answer, with its working
# %%
fw.combustion_products.steps(fuel="G20", excess_air_ratio="1.28")
# %%
print(fw.combustion_products(fuel="G20", excess_air_ratio="1.28").water_dew_point)
# %% [markdown]
# ## Excess air lowers the dew point
# %%
ratio = np.linspace(1.0, 3.0, 101)
fig, ax = plt.subplots(figsize=(7.2, 3.8), layout="constrained")
for fuel, style in (("G20", "-"), ("G31", "--")):
    dew = fw.combustion_products(fuel=fuel, excess_air_ratio=(ratio, "")).water_dew_point.magnitude
    ax.plot(ratio, dew, color="black", linestyle=style)
    ax.annotate({"G20": "natural gas (G20)", "G31": "propane (G31)"}[fuel], (2.2, np.interp(2.2, ratio, dew)), xytext=(0, 6) if fuel == "G20" else (-6, -16), textcoords="offset points", ha="left" if fuel == "G20" else "right")
ax.set(xlabel="excess air ratio", ylabel="dew point of the water / °C", title="Too much air, and condensing stops", xlim=(1, 3))
ax.grid(color="#dddddd");
# %% [markdown]
# ## Efficiency against return temperature
# %%
returning = np.linspace(25, 75, 201)
efficiency = fw.flue_analysis(flue_temperature=(returning + 5, "degC"), **boiler)
fig, ax = plt.subplots(figsize=(7.2, 4.2), layout="constrained")
for name, word, style in (("efficiency_net", "net", "-"), ("efficiency_gross", "gross", "--")):
    values = efficiency[name].magnitude
    ax.plot(returning, values, color="black", linestyle=style)
    ax.annotate(word, (65, np.interp(65, returning, values)), xytext=(0, 6), textcoords="offset points")
knee = float(np.median(efficiency.water_dew_point.magnitude)) - 5
ax.axvline(knee, color="grey", linestyle=":")
ax.annotate("condensing begins", (knee, 103), xytext=(6, 0), textcoords="offset points", color="grey")
ax.axhline(100, color="grey", linewidth=0.7)
ax.set(xlabel="return temperature / °C", ylabel="flue-side efficiency / %", title="The knee", xlim=(25, 75))
ax.grid(color="#dddddd");
# %% [markdown]
# Net efficiency passes 100 % because the net calorific value leaves out the very heat that
# condensing wins back. On the gross basis nothing exceeds 100 %.
# %%
cold, warm = (fw.flue_analysis(flue_temperature=t, **boiler) for t in ("35 degC", "65 degC"))
print(f"gained, net: {cold.efficiency_net.magnitude - warm.efficiency_net.magnitude:.1f} % of the net heat input")
print(f"condensate: {cold.condensate}")
# %% [markdown]
# ## Your turn
#
# At which return temperature does this boiler reach a net efficiency of 104 %? (Seek the flue
# temperature with `fw.flue_analysis.goal_seek(of=…, wanted=…, vary=…, low=…, high=…, **boiler)`
# and take 5 K off.)
# %%
answer = None  # a number, in degrees Celsius
# %%
goal = fw.flue_analysis.goal_seek(of="efficiency_net", wanted="104 %", vary="flue_temperature", low="25 degC", high="80 degC", **boiler)
check(answer, goal.value.to("degC") - 5);
# %% [markdown]
# ## Cautions
# %%
print("\n".join(cold.cautions))
