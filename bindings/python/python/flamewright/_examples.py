"""Examples of every calculation, run by the tests. Written by `write_examples.py`: do not edit."""

EXAMPLES: dict[str, str] = {
    "absolute_pressure": """\
>>> import flamewright as fw
>>> result = fw.absolute_pressure(
...     gauge_pressure="20.3 mbar", barometric_pressure="1004 mbar",
... )
>>> print(result.absolute_pressure)
1024 mbar
""",
    "altitude": """\
>>> import flamewright as fw
>>> result = fw.altitude(
...     altitude="1500 m",
... )
>>> print(result.barometric_pressure)
845.6 mbar
>>> print(result.heat_input_ratio)
0.9135
""",
    "analyser_reading": """\
>>> import flamewright as fw
>>> result = fw.analyser_reading(
...     reading="48 ppm", range_high="2000 ppm", resolution="1 ppm", accuracy_absolute="10 ppm",
...     accuracy_relative="5 %",
... )
>>> print(result.accuracy)
10 ppm
>>> print(result.standard_uncertainty)
5.781 ppm
""",
    "antifreeze_dose": """\
>>> import flamewright as fw
>>> result = fw.antifreeze_dose(
...     antifreeze="propylene glycol", system_content="180 L", frost_temperature="-15 degC",
... )
>>> print(result.glycol_mass_fraction)
33.23 %
>>> print(result.product_volume)
58.34 L
""",
    "antifreeze_mixture": """\
>>> import flamewright as fw
>>> result = fw.antifreeze_mixture(
...     antifreeze="propylene glycol", glycol_mass_fraction="30 %", temperature="50 degC",
... )
>>> print(result.freezing_temperature)
-12.79 °C
>>> print(result.density)
1007 kg/m³
>>> print(result.specific_heat_capacity)
3937 J/(kg·K)
""",
    "atmospheric_pressure": """\
>>> import flamewright as fw
>>> result = fw.atmospheric_pressure(
...     altitude="350 m",
... )
>>> print(result.standard_pressure)
971.9 mbar
""",
    "block_cool_down": """\
>>> import flamewright as fw
>>> result = fw.block_cool_down(
...     heat_capacity="132 kJ/K", loss_conductance="28 W/K", room_temperature="18 degC",
...     start_temperature="79 degC", target_temperature="60 degC",
... )
>>> print(result.time)
29.32 min
>>> print(result.time_constant)
78.57 min
""",
    "boiling_point": """\
>>> import flamewright as fw
>>> result = fw.boiling_point(
...     water_pressure="1 bar", water_temperature="95 degC",
... )
>>> print(result.boiling_point)
120.4 °C
>>> print(result.margin)
25.42 K
""",
    "burner_cycling": """\
>>> import flamewright as fw
>>> result = fw.burner_cycling(
...     heat_capacity="98 kJ/K", burner_output="24 kW", load="8 kW",
...     cut_out_temperature="82 degC", cut_in_temperature="74 degC",
... )
>>> print(result.on_time)
49 s
>>> print(result.off_time)
98 s
>>> print(result.start_rate)
24.49 1/h
""",
    "burner_pressure": """\
>>> import flamewright as fw
>>> result = fw.burner_pressure(
...     heat_input="28.2 kW", burner_pressure="12.5 mbar", wanted_heat_input="26 kW",
... )
>>> print(result.pressure_for_wanted)
10.63 mbar
""",
    "carbon_monoxide": """\
>>> import flamewright as fw
>>> result = fw.carbon_monoxide(
...     carbon_monoxide_dry="48 ppm", oxygen_dry="4.6 %", air_oxygen="20.95 %",
...     carbon_dioxide_dry="9.1 %",
... )
>>> print(result.carbon_monoxide_ratio)
0.0005275
>>> print(result.carbon_monoxide_air_free)
61.5 ppm
""",
    "chimney_draught": """\
>>> import flamewright as fw
>>> result = fw.chimney_draught(
...     mass_flow="0.022 kg/s", inlet_temperature="110 degC", outdoor_temperature="6 degC",
...     height="5.5 m", bore="150 mm", thermal_resistance="0.2 m2 K/W",
... )
>>> print(result.mean_flue_temperature)
99.09 °C
>>> print(result.outlet_temperature)
88.98 °C
>>> print(result.velocity)
1.372 m/s
""",
    "circuit_balance": """\
>>> import flamewright as fw
>>> result = fw.circuit_balance(
...     sections=[{"name": "riser", "tube": "copper 28x0.9", "length": "12 m", "volume_flow": "900 L/h"}, {"name": "hall", "tube": "copper 22x0.9", "length": "16 m", "volume_flow": "600 L/h", "fittings": {"elbow 90": 4}}, {"name": "office", "tube": "copper 15x0.7", "length": "10 m", "volume_flow": "300 L/h", "fittings": {"elbow 90": 4}}],
...     circuits=[{"name": "hall", "sections": ["riser", "hall"]}, {"name": "office", "sections": ["riser", "office"]}],
... )
>>> print(result.index_pressure_drop)
4.961 kPa
>>> print(result.greatest_velocity)
0.5737 m/s
""",
    "circuit_cycling": """\
>>> import flamewright as fw
>>> result = fw.circuit_cycling(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s",
...     flow_length="9 m", return_length="9 m", pipe_heat_capacity="1900 J/(m K)",
...     pipe_loss="0.9 W/(m K)", room_temperature="18 degC", block_temperature="18 degC",
...     circuit_temperature="18 degC", emitter_output="9 kW", emitter_heat_capacity="180 kJ/K",
...     burner_output="24 kW", cut_out_temperature="70 degC", cut_in_temperature="62 degC",
... )
>>> print(result.on_time)
52.89 s
>>> print(result.off_time)
102.6 s
>>> print(result.start_rate)
23.16 1/h
""",
    "combustion_air_flow": """\
>>> import flamewright as fw
>>> result = fw.combustion_air_flow(
...     heat_input_net="28 kW", net_calorific_value="34 MJ/m3", stoichiometric_air=9.55,
...     excess_air_ratio=1.3,
... )
>>> print(result.gas_rate)
2.965 m³/h
>>> print(result.air_flow)
36.81 m³/h
""",
    "combustion_products": """\
>>> import flamewright as fw
>>> result = fw.combustion_products(
...     fuel="G20", excess_air_ratio=1.28,
... )
>>> print(result.wet_flue)
13.22
>>> print(result.oxygen_dry)
4.991 %
>>> print(result.carbon_dioxide_dry)
8.957 %
>>> print(result.water_dew_point)
54.42 °C
""",
    "cool_down": """\
>>> import flamewright as fw
>>> result = fw.cool_down(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s",
...     flow_length="9 m", return_length="9 m", pipe_heat_capacity="1900 J/(m K)",
...     pipe_loss="0.9 W/(m K)", room_temperature="18 degC", block_temperature="82 degC",
...     circuit_temperature="70 degC", target_temperature="60 degC",
... )
>>> print(result.time)
29.07 min
>>> print(result.heat_released)
2496 kJ
""",
    "cool_down_fit": """\
>>> import flamewright as fw
>>> result = fw.cool_down_fit(
...     times=["0 min", "5 min", "10 min", "15 min", "20 min", "30 min"],
...     temperatures=["82.0 degC", "76.9 degC", "72.2 degC", "67.9 degC", "64.0 degC", "57.0 degC"],
...     room_temperature="18 degC", heat_capacity="132 kJ/K",
... )
>>> print(result.time_constant)
60.56 min
>>> print(result.loss_conductance)
36.33 W/K
""",
    "critical_radius": """\
>>> import flamewright as fw
>>> result = fw.critical_radius(
...     outside_diameter="15 mm", insulation_thickness="9 mm",
...     insulation_conductivity="0.04 W/(m K)",
... )
>>> print(result.critical_radius)
4 mm
>>> print(result.loss_ratio)
0.5174
""",
    "dry_air": """\
>>> import flamewright as fw
>>> result = fw.dry_air(
...     temperature="20 degC",
... )
>>> print(result.density)
1.205 kg/m³
>>> print(result.thermal_conductivity)
0.02587 W/(m·K)
>>> print(result.kinematic_viscosity)
0.00001511 m²/s
""",
    "duty_point": """\
>>> import flamewright as fw
>>> result = fw.duty_point(
...     pump_flows=["0 m3/h", "1 m3/h", "2 m3/h", "3 m3/h"],
...     pump_pressures=["60 kPa", "55 kPa", "40 kPa", "15 kPa"], known_flow="1.2 m3/h",
...     known_pressure_drop="20 kPa",
... )
>>> print(result.volume_flow)
1769 L/h
>>> print(result.pressure)
43.46 kPa
""",
    "emitter_at_flow": """\
>>> import flamewright as fw
>>> result = fw.emitter_at_flow(
...     rated_output="1500 W", mass_flow="60 kg/h", flow_temperature="70 degC",
...     room_temperature="20 degC",
... )
>>> print(result.return_temperature)
53.1 °C
>>> print(result.heat_output)
1179 W
""",
    "emitter_output": """\
>>> import flamewright as fw
>>> result = fw.emitter_output(
...     rated_output="1500 W", flow_temperature="55 degC", return_temperature="45 degC",
...     room_temperature="20 degC",
... )
>>> print(result.heat_output)
772.1 W
>>> print(result.output_factor)
0.5148
""",
    "expansion_vessel": """\
>>> import flamewright as fw
>>> result = fw.expansion_vessel(
...     system_content="180 L", highest_temperature="80 degC", static_height="7 m",
... )
>>> print(result.expansion_volume)
5.17 L
>>> print(result.pre_charge)
0.9863 bar
>>> print(result.vessel_volume)
18.89 L
""",
    "fitting_loss": """\
>>> import flamewright as fw
>>> result = fw.fitting_loss(
...     fitting="elbow 90", bore="20.2 mm",
... )
>>> print(result.loss_coefficient)
0.7173
>>> print(result.equivalent_length)
0.606 m
""",
    "flame_supervision_voltage": """\
>>> import flamewright as fw
>>> result = fw.flame_supervision_voltage(
...     open_circuit_voltage="24 mV", loaded_voltage="12 mV", drop_out_voltage="2.5 mV",
... )
>>> print(result.holding_ratio)
4.8
>>> print(result.holding_margin)
9.5 mV
""",
    "flame_temperature": """\
>>> import flamewright as fw
>>> result = fw.flame_temperature(
...     fuel="G20", excess_air_ratio=1.2, fuel_temperature="15 degC", air_temperature="15 degC",
... )
>>> print(result.flame_temperature)
1766 °C
>>> print(result.flame_temperature_complete)
1790 °C
""",
    "flow_from_heat": """\
>>> import flamewright as fw
>>> result = fw.flow_from_heat(
...     heat_output="12 kW", flow_temperature="70 degC", return_temperature="55 degC",
... )
>>> print(result.mass_flow)
0.1911 kg/s
>>> print(result.volume_flow_at_return)
698 L/h
""",
    "flue_analysis": """\
>>> import flamewright as fw
>>> result = fw.flue_analysis(
...     fuel="G20", oxygen_dry=fw.uncertain("4.6 %", accuracy="0.3 %"),
...     carbon_monoxide_dry="48 ppm", flue_temperature="180 degC", air_temperature="20 degC",
... )
>>> print(result.excess_air)
25.17 % (± 2.4 %, k = 2)
>>> print(result.carbon_monoxide_ratio)
0.0005234 (± 1.1e-05, k = 2)
>>> print(result.flue_loss_net)
7.949 % (± 0.14 %, k = 2)
>>> print(result.efficiency_net)
92.04 % (± 0.14 %, k = 2)
""",
    "flue_emissions": """\
>>> import flamewright as fw
>>> result = fw.flue_emissions(
...     fuel="G20", oxygen_dry="4.6 %", carbon_monoxide_dry="48 ppm",
...     nitrogen_oxides_dry="60 ppm", reference_oxygen="3 %", air_oxygen="20.95 %",
... )
>>> print(result.carbon_monoxide_at_reference)
52.7 ppm
>>> print(result.carbon_monoxide_air_free)
61.5 ppm
""",
    "flue_flow": """\
>>> import flamewright as fw
>>> result = fw.flue_flow(
...     velocity="1.8 m/s", mean_flue_temperature="110 degC", bore="150 mm", length="5.5 m",
...     loss_coefficient=1.2, roughness="1 mm",
... )
>>> print(result.mass_flow)
0.02804 kg/s
>>> print(result.pressure_loss)
3.739 Pa
""",
    "flue_gas_flow": """\
>>> import flamewright as fw
>>> result = fw.flue_gas_flow(
...     fuel="G20", heat_input_net="28 kW", excess_air_ratio=1.66, flue_temperature="212 degC",
... )
>>> print(result.mass_flow)
0.01668 kg/s
>>> print(result.volume_flow)
85.05 m³/h
>>> print(result.dew_point)
50.84 °C
""",
    "friction_factor": """\
>>> import flamewright as fw
>>> result = fw.friction_factor(
...     reynolds_number=40000, relative_roughness=0.0005,
... )
>>> print(result.friction_factor)
0.02347
>>> print(result.turbulent_friction_factor)
0.02347
""",
    "fuel_properties": """\
>>> import flamewright as fw
>>> result = fw.fuel_properties(
...     fuel="G20",
... )
>>> print(result.gross_calorific_value)
37.78 MJ/m³
>>> print(result.net_calorific_value)
34.01 MJ/m³
>>> print(result.gross_wobbe_index)
50.72 MJ/m³
>>> print(result.relative_density)
0.5547
""",
    "gas_energy": """\
>>> import flamewright as fw
>>> result = fw.gas_energy(
...     volume="412 m3", conversion_factor=1.022, gross_calorific_value="39.4 MJ/m3",
... )
>>> print(result.reference_volume)
421.1 m³
>>> print(result.energy_gross)
4608 kWh
""",
    "gas_enthalpy": """\
>>> import flamewright as fw
>>> result = fw.gas_enthalpy(
...     temperature="180 degC",
... )
>>> print(result.carbon_dioxide)
6.244 kJ/mol
>>> print(result.water_vapour)
5.286 kJ/mol
>>> print(result.nitrogen)
4.532 kJ/mol
""",
    "gas_installation": """\
>>> import flamewright as fw
>>> result = fw.gas_installation(
...     fuel="G20",
...     sections=[{"name": "to tee", "length": "6 m", "tube": "copper 28x0.9"}, {"name": "boiler", "from": "to tee", "length": "3 m", "tube": "copper 22x0.9", "load": "28 kW"}, {"name": "hob", "from": "to tee", "length": "4 m", "tube": "copper 15x0.7", "load": "8 kW"}],
...     inlet_pressure="21 mbar",
... )
>>> print(result.gas_flow)
3.43 m³/h
>>> print(result.greatest_drop)
22.12 Pa
>>> print(result.pipe_volume)
4.777 L
""",
    "gas_pipe_discharge": """\
>>> import flamewright as fw
>>> result = fw.gas_pipe_discharge(
...     fuel="G20", allowed_drop="1 mbar", length="12 m", tube="copper 22x0.9",
...     inlet_pressure="21 mbar",
... )
>>> print(result.gas_flow_low)
4.183 m³/h
>>> print(result.heat_input_gross)
43.89 kW
""",
    "gas_pipe_drop": """\
>>> import flamewright as fw
>>> result = fw.gas_pipe_drop(
...     fuel="G20", heat_input_gross="31 kW", length="12 m", tube="copper 22x0.9",
...     inlet_pressure="21 mbar",
... )
>>> print(result.gas_flow)
2.954 m³/h
>>> print(result.velocity)
2.508 m/s
>>> print(result.drop_at_inlet_density_low)
25.68 Pa
""",
    "gas_pipe_sizing": """\
>>> import flamewright as fw
>>> result = fw.gas_pipe_sizing(
...     fuel="G20",
...     sections=[{"name": "to tee", "length": "6 m"}, {"name": "boiler", "from": "to tee", "length": "3 m", "load": "28 kW"}, {"name": "hob", "from": "to tee", "length": "4 m", "load": "8 kW"}],
...     tubes=["copper 15x0.7", "copper 22x0.9", "copper 28x0.9"], allowed_drop="1 mbar",
...     inlet_pressure="21 mbar",
... )
>>> print(result.greatest_drop)
47.26 Pa
>>> print(result.spare_drop)
52.74 Pa
>>> print(result.widest_bore)
20.2 mm
""",
    "gas_properties": """\
>>> import flamewright as fw
>>> result = fw.gas_properties(
...     methane="92 %", ethane="5 %", propane="1 %", nitrogen="1 %", carbon_dioxide="1 %",
... )
>>> print(result.gross_calorific_value)
39.02 MJ/m³
>>> print(result.relative_density)
0.6027
>>> print(result.gross_wobbe_index)
50.26 MJ/m³
""",
    "gas_rate": """\
>>> import flamewright as fw
>>> result = fw.gas_rate(
...     fuel="G20", volume="0.100 m3", time="2 min 4.6 s", gas_pressure="20.3 mbar",
...     gas_temperature="9 degC", barometric_pressure="1004 mbar", plate_heat_input_net="28 kW",
... )
>>> print(result.gas_rate)
2.889 m³/h
>>> print(result.conversion_factor)
1.033
>>> print(result.heat_input_net)
28.19 kW
>>> print(result.share_of_plate_net)
100.7 %
""",
    "gas_rate_test_time": """\
>>> import flamewright as fw
>>> result = fw.gas_rate_test_time(
...     heat_input_gross="31 kW", gross_calorific_value="37.78 MJ/m3", volume="0.1 m3",
...     meter_resolution="0.001 m3", wanted_uncertainty="1 %",
... )
>>> print(result.gas_rate)
2.954 m³/h
>>> print(result.time_for_volume)
121.9 s
>>> print(result.time_for_uncertainty)
54.09 s
""",
    "gas_rate_uncertainty": """\
>>> import flamewright as fw
>>> result = fw.gas_rate_uncertainty(
...     volume="0.100 m3", meter_resolution="0.001 m3", time="124.6 s",
...     maximum_permissible_error="2 %", gross_calorific_value="37.78 MJ/m3",
... )
>>> print(result.heat_input_gross)
30.32 kW
>>> print(result.expanded_uncertainty)
0.7499 kW
>>> print(result.share_of_meter)
87.2 %
""",
    "heat_from_flow": """\
>>> import flamewright as fw
>>> result = fw.heat_from_flow(
...     volume_flow="690 L/h", flow_temperature="70 degC", return_temperature="55 degC",
... )
>>> print(result.heat_output)
11.86 kW
""",
    "heat_store": """\
>>> import flamewright as fw
>>> result = fw.heat_store(
...     start_temperature="82 degC", end_temperature="60 degC", cast_iron_mass="105 kg",
...     water_content="11 L",
... )
>>> print(result.heat_capacity)
97.24 kJ/K
>>> print(result.heat)
0.5943 kWh
""",
    "humid_air": """\
>>> import flamewright as fw
>>> result = fw.humid_air(
...     temperature="20 degC", relative_humidity="60 %",
... )
>>> print(result.dew_point)
12.01 °C
>>> print(result.humidity_ratio)
0.008773 kg/kg
>>> print(result.density)
1.198 kg/m³
""",
    "inclined_gauge": """\
>>> import flamewright as fw
>>> result = fw.inclined_gauge(
...     length="62 mm", angle="11.5 deg", relative_density=0.784,
... )
>>> print(result.level_difference)
12.36 mm
>>> print(result.pressure)
95.04 Pa
""",
    "inhibitor_dose": """\
>>> import flamewright as fw
>>> result = fw.inhibitor_dose(
...     system_content="180 L", dose_ratio="1 %",
... )
>>> print(result.dose)
1.8 L
>>> print(result.containers)
1.8
""",
    "injector_flow": """\
>>> import flamewright as fw
>>> result = fw.injector_flow(
...     injector_diameter="2.1 mm", burner_pressure="12.5 mbar", relative_density=0.555,
...     discharge_coefficient=0.85, gross_calorific_value="37.78 MJ/m3",
... )
>>> print(result.gas_flow)
0.6427 m³/h
>>> print(result.heat_input_gross)
6.745 kW
""",
    "injector_size": """\
>>> import flamewright as fw
>>> result = fw.injector_size(
...     heat_input_gross="6 kW", gross_calorific_value="37.78 MJ/m3", burner_pressure="12.5 mbar",
...     relative_density=0.555, discharge_coefficient=0.85,
... )
>>> print(result.injector_diameter)
1.981 mm
""",
    "installation_volume": """\
>>> import flamewright as fw
>>> result = fw.installation_volume(
...     pipes=[{"tube": "copper 22x0.9", "length": "12 m"}, {"tube": "copper 15x0.7", "length": "5 m"}],
...     meter_volume="6 L", fittings_allowance="10 %",
... )
>>> print(result.pipe_volume)
4.572 L
>>> print(result.installation_volume)
11.03 L
""",
    "leak_class": """\
>>> import flamewright as fw
>>> result = fw.leak_class(
...     classes=[{"name": "usable", "from": "0 L/h"}, {"name": "to be mended", "from": "1 L/h"}, {"name": "shut off", "from": "5 L/h"}],
...     leak_rate="1.4 L/h",
... )
>>> print(result.class_number)
2
>>> print(result.class_from)
1 L/h
>>> print(result.class_below)
5 L/h
""",
    "leak_scaling": """\
>>> import flamewright as fw
>>> result = fw.leak_scaling(
...     leak_rate="0.8 L/h", test_pressure="50 mbar", operating_pressure="21 mbar",
... )
>>> print(result.leak_rate_laminar)
0.5549 L/h
>>> print(result.leak_rate_orifice)
0.6961 L/h
""",
    "let_by": """\
>>> import flamewright as fw
>>> result = fw.let_by(
...     installation_volume="16.3 L", start_pressure="10 mbar", pressure_rise="0.4 mbar",
...     test_duration="1 min", readable_movement="0.25 mbar",
... )
>>> print(result.let_by_rate)
0.3861 L/h
>>> print(result.smallest_detectable_flow)
0.2413 L/h
""",
    "liquid_column": """\
>>> import flamewright as fw
>>> result = fw.liquid_column(
...     level_difference="203 mm", liquid_temperature="15 degC",
... )
>>> print(result.pressure)
19.89 mbar
""",
    "liquid_water": """\
>>> import flamewright as fw
>>> result = fw.liquid_water(
...     temperature="60 degC", pressure="2 bar",
... )
>>> print(result.density)
983.3 kg/m³
>>> print(result.specific_heat_capacity)
4183 J/(kg·K)
>>> print(result.dynamic_viscosity)
0.0004661 Pa·s
""",
    "local_gravity": """\
>>> import flamewright as fw
>>> result = fw.local_gravity(
...     latitude="52 deg", height="80 m",
... )
>>> print(result.gravity)
9.812 m/s²
""",
    "mass_concentration": """\
>>> import flamewright as fw
>>> result = fw.mass_concentration(
...     gas="carbon monoxide", fraction="48 ppm", temperature="0 degC",
... )
>>> print(result.mass_concentration)
59.98 mg/m³
""",
    "material_properties": """\
>>> import flamewright as fw
>>> result = fw.material_properties(
...     material="mineral wool", temperature="50 degC",
... )
>>> print(result.thermal_conductivity)
0.035 W/(m·K)
>>> print(result.density)
48 kg/m³
""",
    "metering_reference_change": """\
>>> import flamewright as fw
>>> result = fw.metering_reference_change(
...     gross_calorific_value="37.78 MJ/m3", stated_temperature="15 degC",
...     wanted_temperature="0 degC",
... )
>>> print(result.volume_ratio)
1.055
>>> print(result.gross_calorific_value)
39.85 MJ/m³
""",
    "natural_draught": """\
>>> import flamewright as fw
>>> result = fw.natural_draught(
...     height="5.5 m", outdoor_temperature="6 degC", mean_flue_temperature="110 degC",
... )
>>> print(result.draught)
20.43 Pa
>>> print(result.reversal_outdoor_temperature)
126 °C
""",
    "opening_flow": """\
>>> import flamewright as fw
>>> result = fw.opening_flow(
...     free_area="14000 mm2", pressure_difference="4 Pa",
... )
>>> print(result.air_flow)
79.25 m³/h
>>> print(result.equivalent_area)
14000 mm²
""",
    "opening_size": """\
>>> import flamewright as fw
>>> result = fw.opening_size(
...     air_flow="40 m3/h", pressure_difference="4 Pa",
... )
>>> print(result.free_area)
7067 mm²
""",
    "overshoot": """\
>>> import flamewright as fw
>>> result = fw.overshoot(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s",
...     flow_length="9 m", return_length="9 m", pipe_heat_capacity="1900 J/(m K)",
...     pipe_loss="0.9 W/(m K)", room_temperature="18 degC", film_conductance="900 W/K",
...     block_temperature="70 degC", circuit_temperature="65 degC", burner_output="24 kW",
...     cut_out_temperature="82 degC", limit_temperature="95 degC",
... )
>>> print(result.peak_with_pump_stopped)
89.24 °C
>>> print(result.peak_with_pump_running)
85.48 °C
>>> print(result.margin_with_pump_stopped)
5.756 K
""",
    "partial_drain": """\
>>> import flamewright as fw
>>> result = fw.partial_drain(
...     system_content="180 L", drained_volume="40 L", product_fraction="1 %",
...     wanted_fraction="1 %",
... )
>>> print(result.product_lost)
0.4 L
>>> print(result.product_needed)
0.4 L
""",
    "pipe_cool_down": """\
>>> import flamewright as fw
>>> result = fw.pipe_cool_down(
...     start_temperature="70 degC", target_temperature="40 degC", tube="copper 22x0.9",
...     emissivity=0.9, insulation_thickness="25 mm", insulation_conductivity="0.04 W/(m K)",
...     air_temperature="12 degC",
... )
>>> print(result.time_to_target)
97 min
>>> print(result.heat_loss_at_start)
11.06 W/m
""",
    "pipe_heat_loss": """\
>>> import flamewright as fw
>>> result = fw.pipe_heat_loss(
...     water_temperature="70 degC", tube="copper 22x0.9", emissivity=0.9,
...     insulation_thickness="25 mm", insulation_conductivity="0.04 W/(m K)",
...     air_temperature="12 degC",
... )
>>> print(result.heat_loss_per_length)
11.06 W/m
>>> print(result.surface_temperature)
17.84 °C
""",
    "pipe_temperature_drop": """\
>>> import flamewright as fw
>>> result = fw.pipe_temperature_drop(
...     inlet_temperature="70 degC", water_flow="300 L/h", length="20 m", tube="copper 22x0.9",
...     emissivity=0.9, insulation_thickness="25 mm", insulation_conductivity="0.04 W/(m K)",
...     air_temperature="12 degC",
... )
>>> print(result.outlet_temperature)
69.36 °C
>>> print(result.heat_loss)
219.6 W
""",
    "platinum_resistance": """\
>>> import flamewright as fw
>>> result = fw.platinum_resistance(
...     temperature="60 degC", resistance_at_zero="1000 ohm", class_="B",
... )
>>> print(result.resistance)
1232 Ω
>>> print(result.tolerance)
0.6 K
""",
    "platinum_temperature": """\
>>> import flamewright as fw
>>> result = fw.platinum_temperature(
...     resistance="1232 ohm", resistance_at_zero="1000 ohm", lead_resistance="1 ohm",
... )
>>> print(result.temperature)
59.63 °C
>>> print(result.lead_error)
0.2605 K
""",
    "pump_overrun": """\
>>> import flamewright as fw
>>> result = fw.pump_overrun(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s",
...     flow_length="9 m", return_length="9 m", pipe_heat_capacity="1900 J/(m K)",
...     pipe_loss="0.9 W/(m K)", room_temperature="18 degC", block_temperature="82 degC",
...     circuit_temperature="70 degC", overrun_temperature="60 degC",
... )
>>> print(result.stop_time)
29.07 min
>>> print(result.heat_left)
5530 kJ
""",
    "purge": """\
>>> import flamewright as fw
>>> result = fw.purge(
...     installation_volume="16.3 L", purge_factor=1.5, purge_flow="1 m3/h",
... )
>>> print(result.purge_volume)
24.45 L
>>> print(result.purge_time)
88.02 s
""",
    "purge_velocity": """\
>>> import flamewright as fw
>>> result = fw.purge_velocity(
...     bore="54 mm", velocity="0.6 m/s", length="30 m",
... )
>>> print(result.purge_flow)
4.947 m³/h
>>> print(result.travel_time)
50 s
""",
    "room_concentration": """\
>>> import flamewright as fw
>>> result = fw.room_concentration(
...     source="0.5 L/h", room_volume="40 m3", air_change_rate="0.6 1/h", elapsed_time="1 h",
... )
>>> print(result.concentration)
9.4 ppm
>>> print(result.steady)
20.83 ppm
""",
    "saturated_water": """\
>>> import flamewright as fw
>>> result = fw.saturated_water(
...     temperature="60 degC",
... )
>>> print(result.saturation_pressure)
19946 Pa
>>> print(result.heat_of_vaporisation)
2358 kJ/kg
""",
    "siegert_constants": """\
>>> import flamewright as fw
>>> result = fw.siegert_constants(
...     fuel="G20",
... )
>>> print(result.a2)
0.661
>>> print(result.b)
0.009694
>>> print(result.largest_deviation)
0.1137 %
""",
    "siegert_flue_loss": """\
>>> import flamewright as fw
>>> result = fw.siegert_flue_loss(
...     constants="de-natural-gas", oxygen_dry="4.6 %", flue_temperature="180 degC",
...     air_temperature="20 degC",
... )
>>> print(result.flue_loss_net)
7.879 %
>>> print(result.efficiency_net)
92.12 %
""",
    "static_head": """\
>>> import flamewright as fw
>>> result = fw.static_head(
...     height="7 m",
... )
>>> print(result.static_pressure)
0.6863 bar
""",
    "system_content": """\
>>> import flamewright as fw
>>> result = fw.system_content(
...     pipes=[{"tube": "copper 22x0.9", "length": "40 m"}, {"tube": "copper 15x0.7", "length": "60 m"}],
...     emitter_content="85 L", boiler_content="11 L",
... )
>>> print(result.pipe_content)
21.53 L
>>> print(result.system_content)
117.5 L
""",
    "thermistor_beta": """\
>>> import flamewright as fw
>>> result = fw.thermistor_beta(
...     resistance="2500 ohm", reference_resistance="10 kohm", beta="3977 K",
... )
>>> print(result.temperature)
59.58 °C
""",
    "thermistor_beta_of_points": """\
>>> import flamewright as fw
>>> result = fw.thermistor_beta_of_points(
...     first_resistance="32650 ohm", first_temperature="0 degC", second_resistance="1256 ohm",
...     second_temperature="80 degC",
... )
>>> print(result.beta)
3928 K
""",
    "thermistor_check": """\
>>> import flamewright as fw
>>> result = fw.thermistor_check(
...     curve="beta", reference_resistance="10 kohm", beta="3977 K", temperature="60 degC",
...     temperature_tolerance="0.5 K", resistance_tolerance="2 %", measured_resistance="2500 ohm",
... )
>>> print(result.lowest_resistance)
2371 Ω
>>> print(result.highest_resistance)
2557 Ω
>>> print(result.indicated_temperature)
59.58 °C
""",
    "thermistor_fit": """\
>>> import flamewright as fw
>>> result = fw.thermistor_fit(
...     first_resistance="32650 ohm", first_temperature="0 degC", second_resistance="10000 ohm",
...     second_temperature="25 degC", third_resistance="1256 ohm", third_temperature="80 degC",
...     resistance="2500 ohm",
... )
>>> print(result.temperature)
59.86 °C
""",
    "thermistor_temperature": """\
>>> import flamewright as fw
>>> result = fw.thermistor_temperature(
...     curve="beta", reference_resistance="10 kohm", beta="3977 K", resistance="2500 ohm",
... )
>>> print(result.temperature)
59.58 °C
>>> print(result.sensitivity)
-3.592 %/K
""",
    "thermocouple_temperature": """\
>>> import flamewright as fw
>>> result = fw.thermocouple_temperature(
...     voltage="7.5 mV", reference_junction_temperature="22 degC",
... )
>>> print(result.temperature)
206 °C
>>> print(result.addition_error)
-0.00256 K
""",
    "thermocouple_voltage": """\
>>> import flamewright as fw
>>> result = fw.thermocouple_voltage(
...     type="K", temperature="205 degC", reference_junction_temperature="22 degC",
... )
>>> print(result.voltage)
7.46 mV
>>> print(result.seebeck_coefficient)
40.01 µV/K
""",
    "thermostat_differential": """\
>>> import flamewright as fw
>>> result = fw.thermostat_differential(
...     cut_out_temperature="81.8 degC", cut_in_temperature="74.2 degC",
... )
>>> print(result.differential)
7.6 K
>>> print(result.mid_point)
78 °C
""",
    "thermostat_test": """\
>>> import flamewright as fw
>>> result = fw.thermostat_test(
...     set_point="82 degC", cut_outs=["81.8 degC", "82.1 degC", "81.6 degC"],
...     cut_ins=["74.1 degC", "74.4 degC", "74.0 degC"],
... )
>>> print(result.differential)
7.667 K
>>> print(result.offset)
-0.1667 K
>>> print(result.cut_out_repeatability)
0.2517 K
""",
    "tightness_plan": """\
>>> import flamewright as fw
>>> result = fw.tightness_plan(
...     installation_volume="16.3 L", readable_movement="0.25 mbar", test_duration="2 min",
... )
>>> print(result.smallest_detectable_leak)
0.1207 L/h
>>> print(result.temperature_sensitivity)
3.586 mbar/K
""",
    "tightness_test": """\
>>> import flamewright as fw
>>> result = fw.tightness_test(
...     installation_volume="16.3 L", test_pressure="20 mbar", pressure_drop="0.5 mbar",
...     test_duration="2 min", readable_movement="0.25 mbar",
... )
>>> print(result.leak_rate)
0.2413 L/h
>>> print(result.temperature_sensitivity)
3.586 mbar/K
""",
    "touch_wait": """\
>>> import flamewright as fw
>>> result = fw.touch_wait(
...     policy="house rule of 2026, invented", surface_temperature="82 degC",
...     room_temperature="18 degC", time_constant="55 min", contact_temperature="50 degC",
... )
>>> print(result.wait)
38.12 min
""",
    "tube_run": """\
>>> import flamewright as fw
>>> result = fw.tube_run(
...     tube="copper 22x0.9", length="12 m",
... )
>>> print(result.bore)
20.2 mm
>>> print(result.content)
3.846 L
>>> print(result.mass)
6.372 kg
""",
    "u_gauge": """\
>>> import flamewright as fw
>>> result = fw.u_gauge(
...     limb_down="101 mm", limb_up="102 mm", liquid_temperature="15 degC",
... )
>>> print(result.level_difference)
203 mm
>>> print(result.pressure)
19.89 mbar
""",
    "valve_kv": """\
>>> import flamewright as fw
>>> result = fw.valve_kv(
...     volume_flow="700 L/h", pressure_drop="5 kPa",
... )
>>> print(result.valve_kv)
3.104 m³/h
""",
    "vent_free_area": """\
>>> import flamewright as fw
>>> result = fw.vent_free_area(
...     width="225 mm", height="150 mm", opening_count=60, opening_width="40 mm",
...     opening_height="6 mm",
... )
>>> print(result.overall_area)
33750 mm²
>>> print(result.free_area)
14400 mm²
>>> print(result.free_share)
42.67 %
""",
    "ventilation_need": """\
>>> import flamewright as fw
>>> result = fw.ventilation_need(
...     rating_basis="heat_input_net", heat_input_net="28 kW", threshold="7 kW",
...     area_rate="500 mm2/kW",
... )
>>> print(result.rating_above_threshold)
21 kW
>>> print(result.free_area)
10500 mm²
""",
    "vessel_check": """\
>>> import flamewright as fw
>>> result = fw.vessel_check(
...     vessel_volume="25 L", pre_charge="0.9 bar", fill_pressure="1.2 bar",
...     system_content="180 L", highest_temperature="80 degC",
... )
>>> print(result.hot_pressure)
1.893 bar
>>> print(result.take_up)
8.019 L
""",
    "volume_fraction": """\
>>> import flamewright as fw
>>> result = fw.volume_fraction(
...     gas="nitrogen dioxide", mass_concentration="120 mg/m3", temperature="0 degC",
... )
>>> print(result.fraction)
58.46 ppm
""",
    "warm_up": """\
>>> import flamewright as fw
>>> result = fw.warm_up(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s",
...     flow_length="9 m", return_length="9 m", pipe_heat_capacity="1900 J/(m K)",
...     pipe_loss="0.9 W/(m K)", room_temperature="18 degC", block_temperature="18 degC",
...     circuit_temperature="18 degC", emitter_output="9 kW", emitter_heat_capacity="180 kJ/K",
...     burner_output="24 kW", cut_out_temperature="82 degC", target_temperature="60 degC",
... )
>>> print(result.time)
7.656 min
>>> print(result.heat_put_in)
11025 kJ
""",
    "water_pressure_drop": """\
>>> import flamewright as fw
>>> result = fw.water_pressure_drop(
...     tube="copper 22x0.9", volume_flow="700 L/h", length="24 m", fittings={"elbow 90": 6},
... )
>>> print(result.velocity)
0.6067 m/s
>>> print(result.pressure_drop)
6.049 kPa
""",
    "wobbe_index": """\
>>> import flamewright as fw
>>> result = fw.wobbe_index(
...     gross_calorific_value="37.78 MJ/m3", relative_density=0.555,
... )
>>> print(result.gross_wobbe_index)
50.71 MJ/m³
""",
}
