# %% [markdown]
# # 7. The hot block
#
# **You learn** how long a cast-iron block stays hot, why a pump runs on, and what another circuit
# does to that.
#
# **The question.** A boiler holds 105 kg of cast iron and 11 L of water at 82 °C. The pump runs on
# until the overrun thermostat opens at 60 °C. How long is that with the radiators closed, and how
# long with them open?
#
# The boiler is **invented**.
# %%
import flamewright as fw
import flamewright.plot
import numpy as np
from checking import check
from matplotlib import pyplot as plt

boiler = {
    "metal_mass": "105 kg",
    "water_content": "11 L",
    "casing_loss": "12 W/K",
    "pump_flow": "0.25 kg/s",
    "flow_length": "9 m",
    "return_length": "9 m",
    "pipe_heat_capacity": "1900 J/(m K)",
    "pipe_loss": "0.9 W/(m K)",
    "room_temperature": "18 degC",
    "block_temperature": "82 degC",
    "circuit_temperature": "70 degC",
    "target_temperature": "60 degC",
}
radiators = {
    "name": "radiators",
    "opening": "opened_after",
    "flow_length": "20 m",
    "return_length": "20 m",
    "pipe_heat_capacity": "800 J/(m K)",
    "pipe_loss": "0.8 W/(m K)",
    "emitter_output": "6000 W",
    "emitter_heat_capacity": "90 kJ/K",
    "circuit_temperature": "18 degC",
}
# %% [markdown]
# ## The sum by hand
#
# Heat capacity: iron 105 kg × 0.5 kJ/(kg·K) and water 11 L × 0.98 kg/L × 4.185 kJ/(kg·K) (the figures
# for iron and water are those that the library takes if it is told no other); the pipes, 18 m × 1.9 kJ/(m·K), take part as well. Loss: casing 12 W/K, pipes 18 m × 0.9 W/(m·K).
# If everything had one temperature, Newton's law of cooling would give the time:
# %%
block, pipes = 105 * 0.5 + 11 * 0.98 * 4.185, 18 * 1.9  # kJ/K
loss = 12 + 18 * 0.9  # W/K
mixed = (block * 82 + pipes * 70) / (block + pipes)  # degC, once pump and pipes have mixed
minutes = (block + pipes) * 1000 / loss * np.log((mixed - 18) / (60 - 18)) / 60
print(f"block {block:.1f} kJ/K, pipes {pipes:.1f} kJ/K, loss {loss:.1f} W/K, mixed {mixed:.1f} °C, time {minutes:.1f} min")
# %% [markdown]
# ## The library's answer, with its working
#
# The library cuts the pipes into cells and follows each, so it needs no such assumption. It finds
# nearly the same time here, because this pump mixes well.
# %%
fw.cool_down.steps(circuits=[radiators], **boiler)
# %%
cooling = fw.cool_down(circuits=[radiators], **boiler)
cooling
# %% [markdown]
# ## Temperatures against time
# %%
thresholds = [{"name": "a hand can rest on it", "temperature": "50 degC"}, {"name": "drain", "temperature": "40 degC"}]
flamewright.plot.cool_down(circuits=[radiators], thresholds=thresholds, first="radiators closed", second="radiators opened", **boiler);
# %% [markdown]
# The answer: about 29 minutes with the radiators closed, under two with them open. Who tests the
# overrun with the radiators open sees almost nothing of it.
#
# The thresholds are the engineer's own (that a hand can rest on metal below about 50 °C is common
# practice without a source).
#
# ## Exponential and numeric solution
#
# The two differ in the first minute, while pump and pipes mix; afterwards one covers the other.
# %%
trace = fw.cool_down.tables(thresholds=thresholds, **boiler)["temperatures"]["columns"]
time, numeric = (np.array(trace[name]["values"]) for name in ("time", "block"))
exponential = 18 + (mixed - 18) * np.exp(-time * 60 * loss / ((block + pipes) * 1000))
heat = (block + pipes) * (numeric - 18) / 1000  # MJ, over the room
fig, (upper, lower) = plt.subplots(2, 1, sharex=True, figsize=(7.2, 5.6), layout="constrained")
upper.plot(time, numeric, color="#aaaaaa", linewidth=5, label="numeric, pipes in cells")
upper.plot(time, exponential, color="black", linestyle="--", label="exponential, all at one temperature")
upper.set(ylabel="block temperature / °C", title="Radiators closed")
upper.legend()
lower.plot(time, heat, color="black")
lower.set(xlabel="time / min", ylabel="heat still held / MJ", ylim=(0, None))
for ax in (upper, lower):
    ax.grid(color="#dddddd")
# %% [markdown]
# ## Why the pump runs on
#
# The iron is hotter than its water when the burner stops. If the pump stopped with it, that heat
# would go into standing water.
# %%
stopped = fw.overshoot(
    **{k: v for k, v in boiler.items() if k not in ("target_temperature", "block_temperature", "circuit_temperature")},
    film_conductance="900 W/K",
    block_temperature="70 degC",
    circuit_temperature="65 degC",
    burner_output="24 kW",
    cut_out_temperature="82 degC",
    limit_temperature="95 degC",
)
print("peak with the pump stopped:", stopped.peak_with_pump_stopped)
print("peak with the pump running:", stopped.peak_with_pump_running)
print("margin to the limit thermostat, pump stopped:", stopped.margin_with_pump_stopped)
# %% [markdown]
# ## Your turn
#
# With 30 mm of insulation the pipes lose 0.2 W/(m·K) instead of 0.9. How long does the pump run
# now with the radiators closed, in minutes?
# %%
answer = None  # a number, in minutes
# %%
check(answer, fw.cool_down(**{**boiler, "pipe_loss": "0.2 W/(m K)"}).time.to("min"));
# %% [markdown]
# ## Cautions
# %%
print("\n".join(cooling.cautions))
