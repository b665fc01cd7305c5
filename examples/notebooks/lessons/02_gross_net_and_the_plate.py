# %% [markdown]
# # 2. Gross, net and the plate
#
# **You learn** why one boiler has several "kW", and how the reference temperature of a calorific
# value changes it.
#
# **The question.** A boiler burns 3.00 m³/h of gas measured at 15 °C and 1013.25 mbar. What would
# its plate say if it were written gross, and what if it were written net?
#
# The fuels are the published test gases (EN 437) with properties after ISO 6976; the boiler is
# **invented**.
# %%
import flamewright as fw
from checking import check
from matplotlib import pyplot as plt

fw.fuel_properties(fuel="G20")
# %% [markdown]
# ## The sum by hand
#
# Burning one cubic metre of methane makes about 1.5 kg of water, as vapour. Gross counts the heat of
# that vapour as if it were all got back; net leaves it out. For methane they are about 11 % apart.
# Heat input = rate × calorific value:
# %%
gross, net = 3.00 * 37.78 / 3.6, 3.00 * 34.01 / 3.6  # kW
print(f"{gross:.2f} kW gross, {net:.2f} kW net, ratio {gross / net:.3f}")
# %% [markdown]
# ## The library's working
# %%
fw.fuel_properties.steps(fuel="G20")
# %% [markdown]
# ## Four ways to state one calorific value
#
# A calorific value needs two temperatures: that of the combustion and that at which the gas was
# metered. Countries chose differently (the pairs below are common practice, check yours):
# %%
pairs = {
    "15/15 °C": ("15 degC", "15 degC"),
    "25/0 °C": ("25 degC", "0 degC"),
    "0/0 °C": ("0 degC", "0 degC"),
    "60 °F/60 °F": ("60 degF", "60 degF"),
}
table = {
    (fuel, name): fw.fuel_properties(fuel=fuel, combustion_temperature=burning, metering_temperature=metering)
    for fuel in ("G20", "G25", "G31")
    for name, (burning, metering) in pairs.items()
}
print(f"{'fuel':5} {'reference':12} {'gross':>14} {'net':>14} {'gross Wobbe':>14} {'gross/net':>10}")
for (fuel, name), p in table.items():
    print(f"{fuel:5} {name:12} {p.gross_calorific_value!s:>14} {p.net_calorific_value!s:>14} {p.gross_wobbe_index!s:>14} {p.gross_over_net!s:>10}")
# %% [markdown]
# The cubic metre at 0 °C holds 5.5 % more gas than the one at 15 °C. A calorific value with the
# wrong reference is a 5 % mistake that looks like nothing.
#
# ## One boiler, four plates
# %%
# The same gas: 3.00 m3/h at 15 degC is less than 3.00 m3/h at 0 degC.
fig, ax = plt.subplots(figsize=(7.2, 3.8), layout="constrained")
labels, places = [], []
for k, name in enumerate(pairs):
    p = table["G20", name]
    molar = table["G20", "15/15 °C"]
    metered = 3.00 * (molar.density.si / p.density.si)  # m3/h of the same mass of gas
    for j, (word, value, hatch, fill) in enumerate((("gross", p.gross_calorific_value, "", "#444444"), ("net", p.net_calorific_value, "//", "white"))):
        kilowatt = metered * value.to("MJ/m3") / 3.6
        ax.bar(k + 0.38 * (j - 0.5), kilowatt, 0.36, color=fill, edgecolor="black", hatch=hatch, label=word if k == 0 else None)
        ax.annotate(f"{kilowatt:.2f}", (k + 0.38 * (j - 0.5), kilowatt), ha="center", xytext=(0, 3), textcoords="offset points", fontsize=9)
ax.set_xticks(range(len(pairs)), list(pairs))
ax.set(xlabel="reference of the calorific value", ylabel="heat input / kW", ylim=(0, 42), title="The same flame, written four ways, gross and net")
ax.legend(loc="upper right", ncols=2);
# %% [markdown]
# With the volume taken at the same reference as the calorific value, the reference hardly
# matters: the flame is the same. Gross against net is the difference that stays.
#
# The library will not let you mix them: a gross heat input is not accepted where a net one is
# asked for.
# %%
rate = fw.gas_rate(fuel="G20", volume="0.100 m3", time="2 min", gas_pressure="20 mbar", gas_temperature="15 degC", barometric_pressure="1013 mbar")
try:
    fw.flue_gas_flow(fuel="G20", heat_input_net=rate.heat_input_gross, excess_air_ratio="1.3")
except fw.Error as refusal:
    print(refusal)
# %% [markdown]
# ## Your turn
#
# A boiler burns 1.20 m³/h of propane (G31), metered at 15 °C. What is its heat input, gross, in
# kW, with the calorific value at 15/15 °C?
# %%
answer = None  # a number, in kW
# %%
check(answer, 1.20 * table["G31", "15/15 °C"].gross_calorific_value.to("MJ/m3") / 3.6);
# %% [markdown]
# ## Cautions
# %%
print("\n".join(rate.cautions))
