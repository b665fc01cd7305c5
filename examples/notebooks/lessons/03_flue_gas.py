# %% [markdown]
# # 3. Flue gas
#
# **You learn** how oxygen, carbon dioxide, excess air and flue loss hang together.
#
# **The question.** The analyser shows 8.9 % oxygen, 32 ppm carbon monoxide (dry sample) and
# 212 °C in the primary flue of a natural-gas boiler; the air is at 18 °C. How much excess air,
# how much carbon dioxide, and what goes up the flue?
#
# The readings are **invented**.
# %%
import flamewright as fw
import flamewright.plot
from checking import check

reading = {"fuel": "G20", "oxygen_dry": "8.9 %", "carbon_monoxide_dry": "32 ppm", "air_temperature": "18 degC"}
# %% [markdown]
# ## The sum by hand
#
# Methane: CH₄ + 2 O₂ → CO₂ + 2 H₂O. One volume of gas needs 2 volumes of oxygen, so 9.55 volumes
# of air (20.95 % oxygen). The dry flue gas of that is 8.55 volumes and holds 1 of CO₂: 11.7 %.
# With 8.9 % oxygen left over, a share 8.9/20.95 of the dry flue gas is unused air:
# %%
air_share = 8.9 / 20.95
carbon_dioxide = 11.75 * (1 - air_share)
excess_air = air_share / (1 - air_share) * 8.547 / 9.547
print(f"CO2 {carbon_dioxide:.2f} %, excess air {100 * excess_air:.0f} %")
# %% [markdown]
# ## The library's answer, with its working
# %%
fw.flue_analysis.steps(flue_temperature="212 degC", **reading)
# %%
flue = fw.flue_analysis(flue_temperature="212 degC", **reading)
flue
# %% [markdown]
# ## Carbon dioxide and oxygen against excess air
#
# Oxygen is measured, carbon dioxide derived from it. They are **not** two independent readings:
# a wrong oxygen cell makes both wrong together.
# %%
flamewright.plot.combustion(fuel="G20", oxygen_dry="8.9 %", carbon_monoxide_dry="32 ppm");
# %% [markdown]
# ## Loss and efficiency against flue temperature
# %%
flamewright.plot.flue_losses(flue_temperature="212 degC", lowest="60 degC", highest="300 degC", **reading);
# %% [markdown]
# The fuel must be the right one: the same oxygen with propane gives more carbon dioxide.
# %%
for fuel in ("G20", "G31"):
    other = fw.flue_analysis(flue_temperature="212 degC", **{**reading, "fuel": fuel})
    print(fuel, other.carbon_dioxide_dry_derived, "of at most", other.carbon_dioxide_maximum)
# %% [markdown]
# ## Your turn
#
# After cleaning, the same boiler shows 6.0 % oxygen and 190 °C. What is its net flue loss, in
# per cent of the net heat input? (`fw.flue_analysis` calls it `flue_loss_net`.)
# %%
answer = None  # a number, in per cent
# %%
check(answer, fw.flue_analysis(flue_temperature="190 degC", **{**reading, "oxygen_dry": "6.0 %"}).flue_loss_net.magnitude);
# %% [markdown]
# ## Cautions
# %%
print("\n".join(flue.cautions))
