"""What a type checker must refuse: every line that ends in `# refused` and no other."""

import flamewright as fw

fw.liquid_water(temperature=60)  # refused
fw.liquid_water()  # refused
fw.liquid_water("60 degC")  # refused
fw.liquid_water(temprature="60 degC")  # refused
fw.liquid_watr(temperature="60 degC")  # refused
fw.flue_analysis(oxygen_dry="5 %", carbon_monoxide_dry="0 ppm", flue_temperature="80 degC", air_temperature="18 degC")  # refused
fw.pipe_heat_loss(water_temperature="60 degC", air_temperature="18 degC", position="sideways")  # refused
fw.uncertain("5 %", acuracy="0.3 %")  # refused

water = fw.liquid_water(temperature="60 degC")
water.denisty  # refused
water.density.magnitud  # refused
water.density.to(7)  # refused
water.in_units(7)  # refused
water.in_units("SI").denisty  # refused
water.density = water.density  # refused
number: float = water.density  # refused
fw.evaluate("liquid_water", temperature=333.15).density  # refused
fw.liquid_water.goal_seek(of="density", wanted="983 kg/m3", vary="temperature", low="1 degC", high="90 degC").result.denisty  # refused
fw.tightness_test.sweep({"test_duration": ("1 min", "5 min")}).result.leakrate  # refused
fw.thermocouple_temperature(type="Q", voltage="7.5 mV", reference_junction_temperature="22 degC")  # refused
fw.uncertain("5 %", accuracy=0.3)  # refused
