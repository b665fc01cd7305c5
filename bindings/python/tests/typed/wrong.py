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
