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
...     reading="34 ppm", range_high="4000 ppm", clean_air_reading="2 ppm",
... )
>>> print(result.accuracy)
0 ppm
>>> print(result.standard_uncertainty)
0 ppm
""",
    "antifreeze_dose": """\
>>> import flamewright as fw
>>> result = fw.antifreeze_dose(
...     system_content="180 L", frost_temperature="-10 degC",
... )
>>> print(result.glycol_mass_fraction)
25.38 %
>>> print(result.product_volume)
44.43 L
""",
    "antifreeze_mixture": """\
>>> import flamewright as fw
>>> result = fw.antifreeze_mixture(
...     antifreeze="propylene glycol", glycol_mass_fraction="30 %", temperature="40 degC",
... )
>>> print(result.freezing_temperature)
-12.79 °C
>>> print(result.density)
1013 kg/m³
>>> print(result.specific_heat_capacity)
3910 J/(kg·K)
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
...     heat_capacity="98 kJ/K", start_temperature="82 degC", target_temperature="60 degC",
...     loss_conductance="28 W/K", room_temperature="18 degC",
... )
>>> print(result.time)
24.57 min
>>> print(result.time_constant)
58.33 min
""",
    "boiling_point": """\
>>> import flamewright as fw
>>> result = fw.boiling_point(
...     water_temperature="95 degC",
... )
>>> print(result.boiling_point)
99.97 °C
>>> print(result.margin)
4.974 K
""",
    "burner_cycling": """\
>>> import flamewright as fw
>>> result = fw.burner_cycling(
...     heat_capacity="150 kJ/K", burner_output="24 kW", load="6 kW",
...     cut_out_temperature="82 degC", cut_in_temperature="74 degC", wanted_on_time="5 min",
... )
>>> print(result.on_time)
66.67 s
>>> print(result.off_time)
200 s
>>> print(result.start_rate)
13.5 1/h
""",
    "burner_pressure": """\
>>> import flamewright as fw
>>> result = fw.burner_pressure(
...     heat_input="31.1 kW", burner_pressure="12.5 mbar", new_burner_pressure="11.4 mbar",
... )
>>> print(result.pressure_for_wanted)
12.5 mbar
""",
    "carbon_monoxide": """\
>>> import flamewright as fw
>>> result = fw.carbon_monoxide(
...     carbon_monoxide_dry="32 ppm", carbon_dioxide_dry="6.8 %",
...     carbon_dioxide_maximum="11.7 %",
... )
>>> print(result.carbon_monoxide_ratio)
0.0004706
>>> print(result.carbon_monoxide_air_free_from_carbon_dioxide)
55.06 ppm
""",
    "chimney_draught": """\
>>> import flamewright as fw
>>> result = fw.chimney_draught(
...     mass_flow="0.02 kg/s", inlet_temperature="120 degC", outdoor_temperature="6 degC",
...     height="5.5 m", bore="150 mm",
... )
>>> print(result.mean_flue_temperature)
99.58 °C
>>> print(result.outlet_temperature)
81.75 °C
>>> print(result.velocity)
1.249 m/s
""",
    "circuit_balance": """\
>>> import flamewright as fw
>>> result = fw.circuit_balance(
...     sections=[{"name": "main", "tube": "copper 22x0.9", "length": "12 m", "volume_flow": "0.6 m3/h"}, {"name": "near", "tube": "copper 15x0.7", "length": "6 m", "volume_flow": "0.3 m3/h"}, {"name": "far", "tube": "copper 15x0.7", "length": "18 m", "volume_flow": "0.3 m3/h"}],
...     circuits=[{"name": "near radiators", "sections": ["main", "near"]}, {"name": "far radiators", "sections": ["main", "far"]}],
... )
>>> print(result.index_pressure_drop)
7.87 kPa
>>> print(result.greatest_velocity)
0.5737 m/s
""",
    "circuit_cycling": """\
>>> import flamewright as fw
>>> result = fw.circuit_cycling(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s",
...     flow_length="9 m", return_length="9 m", pipe_heat_capacity="1900 J/(m K)",
...     pipe_loss="0.9 W/(m K)", emitter_output="6 kW", emitter_heat_capacity="90 kJ/K",
...     room_temperature="18 degC", block_temperature="74 degC", circuit_temperature="65 degC",
...     burner_output="24 kW", cut_out_temperature="82 degC", cut_in_temperature="74 degC",
... )
>>> print(result.on_time)
54.07 s
>>> print(result.off_time)
106.4 s
>>> print(result.start_rate)
22.44 1/h
""",
    "combustion_air_flow": """\
>>> import flamewright as fw
>>> result = fw.combustion_air_flow(
...     heat_input_net="28.0 kW", net_calorific_value="34.02 MJ/m3", stoichiometric_air=9.55,
...     excess_air_ratio=1.66,
... )
>>> print(result.gas_rate)
2.963 m³/h
>>> print(result.air_flow)
46.97 m³/h
""",
    "combustion_products": """\
>>> import flamewright as fw
>>> result = fw.combustion_products(
...     fuel="G20", excess_air_ratio=1.3,
... )
>>> print(result.wet_flue)
13.41
>>> print(result.oxygen_dry)
5.258 %
>>> print(result.carbon_dioxide_dry)
8.807 %
>>> print(result.water_dew_point)
54.12 °C
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
...     times=["0 min", "10 min", "20 min", "30 min", "40 min"],
...     temperatures=["80.0 degC", "71.7 degC", "64.5 degC", "58.3 degC", "52.8 degC"],
...     heat_capacity="100 kJ/K",
... )
>>> print(result.time_constant)
66.48 min
>>> print(result.loss_conductance)
25.07 W/K
""",
    "critical_radius": """\
>>> import flamewright as fw
>>> result = fw.critical_radius(
...     outside_diameter="10 mm", insulation_conductivity="0.04 W/(m K)",
... )
>>> print(result.critical_radius)
4 mm
>>> print(result.loss_ratio)
1
""",
    "dry_air": """\
>>> import flamewright as fw
>>> result = fw.dry_air(
...     temperature="18 degC",
... )
>>> print(result.density)
1.213 kg/m³
>>> print(result.thermal_conductivity)
0.02572 W/(m·K)
>>> print(result.kinematic_viscosity)
0.00001493 m²/s
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
...     rated_output="1500 W", mass_flow="100 kg/h", flow_temperature="65 degC",
... )
>>> print(result.return_temperature)
55.3 °C
>>> print(result.heat_output)
1128 W
""",
    "emitter_output": """\
>>> import flamewright as fw
>>> result = fw.emitter_output(
...     rated_output="1500 W", flow_temperature="65 degC", return_temperature="55 degC",
... )
>>> print(result.heat_output)
1122 W
>>> print(result.output_factor)
0.7482
""",
    "expansion_vessel": """\
>>> import flamewright as fw
>>> result = fw.expansion_vessel(
...     system_content="180 L", highest_temperature="80 degC", static_height="6 m",
... )
>>> print(result.expansion_volume)
5.17 L
>>> print(result.pre_charge)
0.8882 bar
>>> print(result.vessel_volume)
17.74 L
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
...     loaded_voltage="12 mV", open_circuit_voltage="25 mV", drop_out_voltage="3 mV",
... )
>>> print(result.holding_ratio)
4
>>> print(result.holding_margin)
9 mV
""",
    "flame_temperature": """\
>>> import flamewright as fw
>>> result = fw.flame_temperature(
...     fuel="G20", excess_air_ratio=1.3, air_temperature="20 degC",
... )
>>> print(result.flame_temperature)
1674 °C
>>> print(result.flame_temperature_complete)
1689 °C
""",
    "flow_from_heat": """\
>>> import flamewright as fw
>>> result = fw.flow_from_heat(
...     heat_output="24 kW", flow_temperature="75 degC", return_temperature="60 degC",
... )
>>> print(result.mass_flow)
0.382 kg/s
>>> print(result.volume_flow_at_return)
1399 L/h
""",
    "flue_analysis": """\
>>> import flamewright as fw
>>> result = fw.flue_analysis(
...     fuel="G20", oxygen_dry="8.9 %", carbon_monoxide_dry="32 ppm",
...     flue_temperature="212 degC", air_temperature="18 degC", barometric_pressure="1004 mbar",
... )
>>> print(result.excess_air)
66.1 %
>>> print(result.carbon_monoxide_ratio)
0.0004727
>>> print(result.flue_loss_net)
12.44 %
>>> print(result.efficiency_net)
87.55 %
""",
    "flue_emissions": """\
>>> import flamewright as fw
>>> result = fw.flue_emissions(
...     fuel="G20", oxygen_dry="8.9 %", carbon_monoxide_dry="32 ppm",
...     nitrogen_oxides_dry="60 ppm", reference_oxygen="3 %", air_oxygen="20.95 %",
... )
>>> print(result.carbon_monoxide_at_reference)
47.67 ppm
>>> print(result.carbon_monoxide_air_free)
55.63 ppm
""",
    "flue_flow": """\
>>> import flamewright as fw
>>> result = fw.flue_flow(
...     mean_flue_temperature="110 degC", bore="150 mm", length="6.5 m", mass_flow="0.02 kg/s",
... )
>>> print(result.mass_flow)
0.02 kg/s
>>> print(result.pressure_loss)
1.274 Pa
""",
    "flue_gas_flow": """\
>>> import flamewright as fw
>>> result = fw.flue_gas_flow(
...     fuel="G20", heat_input_net="28 kW", excess_air_ratio=1.66,
... )
>>> print(result.mass_flow)
0.01668 kg/s
>>> print(result.volume_flow)
65.41 m³/h
>>> print(result.dew_point)
50.84 °C
""",
    "friction_factor": """\
>>> import flamewright as fw
>>> result = fw.friction_factor(
...     reynolds_number=12000,
... )
>>> print(result.friction_factor)
0.02944
>>> print(result.turbulent_friction_factor)
0.02944
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
...     volume="120 m3", conversion_factor=1.02264, gross_calorific_value="39.3 MJ/m3",
... )
>>> print(result.reference_volume)
122.7 m³
>>> print(result.energy_gross)
1340 kWh
""",
    "gas_enthalpy": """\
>>> import flamewright as fw
>>> result = fw.gas_enthalpy(
...     temperature="212 degC",
... )
>>> print(result.carbon_dioxide)
7.641 kJ/mol
>>> print(result.water_vapour)
6.403 kJ/mol
>>> print(result.nitrogen)
5.475 kJ/mol
""",
    "gas_installation": """\
>>> import flamewright as fw
>>> result = fw.gas_installation(
...     sections=[{"name": "meter to tee", "tube": "copper 28x0.9", "length": "5 m"}, {"name": "boiler", "from": "meter to tee", "tube": "copper 22x0.9", "length": "6 m", "load": "31 kW"}, {"name": "cooker", "from": "meter to tee", "tube": "copper 15x0.7", "length": "4 m", "load": "11 kW"}],
...     inlet_pressure="20.3 mbar",
... )
>>> print(result.gas_flow)
4.002 m³/h
>>> print(result.greatest_drop)
39.02 Pa
>>> print(result.pipe_volume)
5.2 L
""",
    "gas_pipe_discharge": """\
>>> import flamewright as fw
>>> result = fw.gas_pipe_discharge(
...     tube="copper 22x0.9", allowed_drop="1 mbar", length="9 m", inlet_pressure="20.3 mbar",
... )
>>> print(result.gas_flow_low)
4.945 m³/h
>>> print(result.heat_input_gross)
51.89 kW
""",
    "gas_pipe_drop": """\
>>> import flamewright as fw
>>> result = fw.gas_pipe_drop(
...     tube="copper 22x0.9", fittings={"elbow 90": 4}, length="9 m", heat_input_gross="31 kW",
...     inlet_pressure="20.3 mbar",
... )
>>> print(result.gas_flow)
2.954 m³/h
>>> print(result.velocity)
2.51 m/s
>>> print(result.drop_at_inlet_density_low)
25.54 Pa
""",
    "gas_pipe_sizing": """\
>>> import flamewright as fw
>>> result = fw.gas_pipe_sizing(
...     sections=[{"name": "meter to tee", "length": "5 m"}, {"name": "boiler", "from": "meter to tee", "length": "6 m", "load": "31 kW"}, {"name": "cooker", "from": "meter to tee", "length": "4 m", "load": "11 kW"}],
...     tubes=["copper 15x0.7", "copper 22x0.9", "copper 28x0.9"], allowed_drop="1 mbar",
...     inlet_pressure="20.3 mbar",
... )
>>> print(result.greatest_drop)
66.32 Pa
>>> print(result.spare_drop)
33.68 Pa
>>> print(result.widest_bore)
20.2 mm
""",
    "gas_properties": """\
>>> import flamewright as fw
>>> result = fw.gas_properties(
...     methane="93 %", ethane="4 %", propane="1 %", nitrogen="1 %", carbon_dioxide="1 %",
... )
>>> print(result.gross_calorific_value)
38.73 MJ/m³
>>> print(result.relative_density)
0.5978
>>> print(result.gross_wobbe_index)
50.1 MJ/m³
""",
    "gas_rate": """\
>>> import flamewright as fw
>>> result = fw.gas_rate(
...     fuel="G20", volume="0.100 m3", time="2 min 4.6 s", gas_pressure="20.3 mbar",
...     gas_temperature="9 degC", barometric_pressure="1004 mbar",
...     plate_heat_input_net="28.0 kW",
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
...     heat_input_gross="31 kW", gross_calorific_value="37.78 MJ/m3",
...     meter_resolution="0.001 m3", wanted_uncertainty="1 %",
... )
>>> print(result.gas_rate)
2.954 m³/h
>>> print(result.time_for_uncertainty)
54.09 s
""",
    "gas_rate_uncertainty": """\
>>> import flamewright as fw
>>> result = fw.gas_rate_uncertainty(
...     volume="0.100 m3", meter_resolution="0.001 m3", time="2 min 4.6 s",
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
...     volume_flow="1400 L/h", flow_temperature="75 degC", return_temperature="60 degC",
... )
>>> print(result.heat_output)
24.02 kW
""",
    "heat_store": """\
>>> import flamewright as fw
>>> result = fw.heat_store(
...     cast_iron_mass="105 kg", water_content="11 L", start_temperature="82 degC",
...     end_temperature="60 degC",
... )
>>> print(result.heat_capacity)
97.24 kJ/K
>>> print(result.heat)
0.5943 kWh
""",
    "humid_air": """\
>>> import flamewright as fw
>>> result = fw.humid_air(
...     temperature="18 degC", relative_humidity="60 %",
... )
>>> print(result.dew_point)
10.13 °C
>>> print(result.humidity_ratio)
0.00773 kg/kg
>>> print(result.density)
1.207 kg/m³
""",
    "inclined_gauge": """\
>>> import flamewright as fw
>>> result = fw.inclined_gauge(
...     length="82 mm", angle="10 deg",
... )
>>> print(result.level_difference)
14.24 mm
>>> print(result.pressure)
139.6 Pa
""",
    "inhibitor_dose": """\
>>> import flamewright as fw
>>> result = fw.inhibitor_dose(
...     system_content="180 L",
... )
>>> print(result.dose)
1.8 L
>>> print(result.containers)
1.8
""",
    "injector_flow": """\
>>> import flamewright as fw
>>> result = fw.injector_flow(
...     injector_diameter="2.6 mm", burner_pressure="12.5 mbar", discharge_coefficient=0.85,
... )
>>> print(result.gas_flow)
0.9854 m³/h
>>> print(result.heat_input_gross)
10.34 kW
""",
    "injector_size": """\
>>> import flamewright as fw
>>> result = fw.injector_size(
...     burner_pressure="12.5 mbar", discharge_coefficient=0.85, heat_input_gross="6.2 kW",
... )
>>> print(result.injector_diameter)
2.013 mm
""",
    "installation_volume": """\
>>> import flamewright as fw
>>> result = fw.installation_volume(
...     pipes=[{"length": "6 m", "tube": "copper 22x0.9"}, {"length": "3 m", "tube": "copper 15x0.7"}],
...     meter_volume="6 L",
... )
>>> print(result.pipe_volume)
2.359 L
>>> print(result.installation_volume)
8.359 L
""",
    "leak_class": """\
>>> import flamewright as fw
>>> result = fw.leak_class(
...     classes=[{"name": "A", "from": "0 L/h"}, {"name": "B", "from": "1 L/h"}, {"name": "C", "from": "5 L/h"}],
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
...     test_gas="air", operating_gas="G20", test_pressure="100 mbar",
...     operating_pressure="20 mbar",
... )
>>> print(result.leak_rate_laminar)
0.3303 L/h
>>> print(result.leak_rate_orifice)
0.6005 L/h
""",
    "let_by": """\
>>> import flamewright as fw
>>> result = fw.let_by(
...     installation_volume="16.3 L", start_pressure="10 mbar", pressure_rise="0.6 mbar",
...     test_duration="1 min", readable_movement="0.25 mbar",
... )
>>> print(result.let_by_rate)
0.5791 L/h
>>> print(result.smallest_detectable_flow)
0.2413 L/h
""",
    "liquid_column": """\
>>> import flamewright as fw
>>> result = fw.liquid_column(
...     level_difference="210 mm", liquid_temperature="16 degC",
... )
>>> print(result.pressure)
20.57 mbar
""",
    "liquid_water": """\
>>> import flamewright as fw
>>> result = fw.liquid_water(
...     temperature="62 degC",
... )
>>> print(result.density)
982.2 kg/m³
>>> print(result.specific_heat_capacity)
4183 J/(kg·K)
>>> print(result.dynamic_viscosity)
0.0004523 Pa·s
""",
    "local_gravity": """\
>>> import flamewright as fw
>>> result = fw.local_gravity(
...     latitude="53 deg",
... )
>>> print(result.gravity)
9.813 m/s²
""",
    "mass_concentration": """\
>>> import flamewright as fw
>>> result = fw.mass_concentration(
...     gas="carbon monoxide", fraction="32 ppm", temperature="0 degC",
... )
>>> print(result.mass_concentration)
39.99 mg/m³
""",
    "material_properties": """\
>>> import flamewright as fw
>>> result = fw.material_properties(
...     material="grey cast iron",
... )
>>> print(result.thermal_conductivity)
50 W/(m·K)
>>> print(result.density)
7200 kg/m³
""",
    "metering_reference_change": """\
>>> import flamewright as fw
>>> result = fw.metering_reference_change(
...     stated_temperature="0 degC", wanted_temperature="15 degC",
...     gross_calorific_value="39.8 MJ/m3",
... )
>>> print(result.volume_ratio)
0.9479
>>> print(result.gross_calorific_value)
37.73 MJ/m³
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
...     free_area="11000 mm2", pressure_difference="4 Pa",
... )
>>> print(result.air_flow)
62.26 m³/h
>>> print(result.equivalent_area)
11000 mm²
""",
    "opening_size": """\
>>> import flamewright as fw
>>> result = fw.opening_size(
...     air_flow="60 m3/h", pressure_difference="4 Pa",
... )
>>> print(result.free_area)
10600 mm²
""",
    "overshoot": """\
>>> import flamewright as fw
>>> result = fw.overshoot(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K",
...     film_conductance="900 W/K", pump_flow="0.25 kg/s", flow_length="9 m",
...     return_length="9 m", pipe_heat_capacity="1900 J/(m K)", pipe_loss="0.9 W/(m K)",
...     room_temperature="18 degC", block_temperature="70 degC", circuit_temperature="65 degC",
...     burner_output="24 kW", cut_out_temperature="82 degC", limit_temperature="95 degC",
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
...     system_content="180 L", drained_volume="20 L", product_fraction="1 %",
... )
>>> print(result.product_lost)
0.2 L
>>> print(result.product_needed)
0.2 L
""",
    "pipe_cool_down": """\
>>> import flamewright as fw
>>> result = fw.pipe_cool_down(
...     tube="copper 22x0.9", finish="tarnished copper", start_temperature="60 degC",
...     target_temperature="35 degC", air_temperature="18 degC",
... )
>>> print(result.time_to_target)
31.74 min
>>> print(result.heat_loss_at_start)
33.39 W/m
""",
    "pipe_heat_loss": """\
>>> import flamewright as fw
>>> result = fw.pipe_heat_loss(
...     tube="copper 22x0.9", insulation="mineral wool", finish="insulation jacket",
...     insulation_thickness="20 mm", water_temperature="70 degC", air_temperature="18 degC",
... )
>>> print(result.heat_loss_per_length)
9.671 W/m
>>> print(result.surface_temperature)
23.69 °C
""",
    "pipe_temperature_drop": """\
>>> import flamewright as fw
>>> result = fw.pipe_temperature_drop(
...     tube="copper 22x0.9", finish="tarnished copper", inlet_temperature="70 degC",
...     water_flow="600 L/h", length="20 m", air_temperature="10 degC",
... )
>>> print(result.outlet_temperature)
68.54 °C
>>> print(result.heat_loss)
996.1 W
""",
    "platinum_resistance": """\
>>> import flamewright as fw
>>> result = fw.platinum_resistance(
...     class_="B", temperature="62 degC", resistance_at_zero="100 ohm",
... )
>>> print(result.resistance)
124 Ω
>>> print(result.tolerance)
0.61 K
""",
    "platinum_temperature": """\
>>> import flamewright as fw
>>> result = fw.platinum_temperature(
...     class_="B", resistance="124.1 ohm", resistance_at_zero="100 ohm",
... )
>>> print(result.temperature)
62.24 °C
>>> print(result.lead_error)
0 K
""",
    "pump_overrun": """\
>>> import flamewright as fw
>>> result = fw.pump_overrun(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s",
...     flow_length="9 m", return_length="9 m", pipe_heat_capacity="1900 J/(m K)",
...     pipe_loss="0.9 W/(m K)", room_temperature="18 degC", block_temperature="82 degC",
...     circuit_temperature="70 degC", overrun_temperature="60 degC",
...     observed_stop_time="27 min 20 s",
... )
>>> print(result.stop_time)
29.07 min
>>> print(result.heat_left)
5530 kJ
""",
    "purge": """\
>>> import flamewright as fw
>>> result = fw.purge(
...     installation_volume="16.3 L", purge_factor=1.5, purge_flow="0.8 m3/h",
... )
>>> print(result.purge_volume)
24.45 L
>>> print(result.purge_time)
110 s
""",
    "purge_velocity": """\
>>> import flamewright as fw
>>> result = fw.purge_velocity(
...     bore="26 mm", velocity="0.6 m/s", length="18 m",
... )
>>> print(result.purge_flow)
1.147 m³/h
>>> print(result.travel_time)
30 s
""",
    "room_concentration": """\
>>> import flamewright as fw
>>> result = fw.room_concentration(
...     room_volume="40 m3", air_change_rate="0.5 1/h", elapsed_time="2 h", source="0.5 L/h",
... )
>>> print(result.concentration)
15.8 ppm
>>> print(result.steady)
25 ppm
""",
    "saturated_water": """\
>>> import flamewright as fw
>>> result = fw.saturated_water(
...     temperature="55 degC",
... )
>>> print(result.saturation_pressure)
15761 Pa
>>> print(result.heat_of_vaporisation)
2370 kJ/kg
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
...     constants="de-natural-gas", oxygen_dry="8.9 %", flue_temperature="212 degC",
...     air_temperature="18 degC",
... )
>>> print(result.flue_loss_net)
12.33 %
>>> print(result.efficiency_net)
87.67 %
""",
    "static_head": """\
>>> import flamewright as fw
>>> result = fw.static_head(
...     height="6.5 m",
... )
>>> print(result.static_pressure)
0.6373 bar
""",
    "system_content": """\
>>> import flamewright as fw
>>> result = fw.system_content(
...     pipes=[{"tube": "copper 22x0.9", "length": "30 m"}, {"tube": "copper 15x0.7", "length": "60 m"}],
...     emitter_content="70 L", boiler_content="11 L",
... )
>>> print(result.pipe_content)
18.33 L
>>> print(result.system_content)
99.33 L
""",
    "thermistor_beta": """\
>>> import flamewright as fw
>>> result = fw.thermistor_beta(
...     resistance="2.6 kohm", reference_resistance="10 kohm", beta="3977 K",
... )
>>> print(result.temperature)
58.49 °C
""",
    "thermistor_beta_of_points": """\
>>> import flamewright as fw
>>> result = fw.thermistor_beta_of_points(
...     first_resistance="10 kohm", first_temperature="25 degC", second_resistance="1255 ohm",
...     second_temperature="80 degC",
... )
>>> print(result.beta)
3973 K
""",
    "thermistor_check": """\
>>> import flamewright as fw
>>> result = fw.thermistor_check(
...     curve="beta", reference_resistance="10 kohm", beta="3977 K", temperature="60 degC",
...     measured_resistance="2.6 kohm",
... )
>>> print(result.lowest_resistance)
2463 Ω
>>> print(result.highest_resistance)
2463 Ω
>>> print(result.indicated_temperature)
58.49 °C
""",
    "thermistor_fit": """\
>>> import flamewright as fw
>>> result = fw.thermistor_fit(
...     first_resistance="32650 ohm", first_temperature="0 degC", second_resistance="10 kohm",
...     second_temperature="25 degC", third_resistance="1255 ohm", third_temperature="80 degC",
...     resistance="2.6 kohm",
... )
>>> print(result.temperature)
58.76 °C
""",
    "thermistor_temperature": """\
>>> import flamewright as fw
>>> result = fw.thermistor_temperature(
...     curve="beta", reference_resistance="10 kohm", beta="3977 K", resistance="2.6 kohm",
... )
>>> print(result.temperature)
58.49 °C
>>> print(result.sensitivity)
-3.616 %/K
""",
    "thermocouple_temperature": """\
>>> import flamewright as fw
>>> result = fw.thermocouple_temperature(
...     type="K", voltage="7.9 mV", reference_junction_temperature="18 degC",
... )
>>> print(result.temperature)
212 °C
>>> print(result.addition_error)
0.06002 K
""",
    "thermocouple_voltage": """\
>>> import flamewright as fw
>>> result = fw.thermocouple_voltage(
...     type="K", temperature="212 degC", reference_junction_temperature="18 degC",
... )
>>> print(result.voltage)
7.901 mV
>>> print(result.seebeck_coefficient)
40.09 µV/K
""",
    "thermostat_differential": """\
>>> import flamewright as fw
>>> result = fw.thermostat_differential(
...     cut_out_temperature="81.8 degC", cut_in_temperature="74.1 degC",
... )
>>> print(result.differential)
7.7 K
>>> print(result.mid_point)
77.95 °C
""",
    "thermostat_test": """\
>>> import flamewright as fw
>>> result = fw.thermostat_test(
...     cut_outs=["81.8 degC", "82.1 degC", "81.6 degC"],
...     cut_ins=["74.1 degC", "74.4 degC", "74.0 degC"], set_point="82 degC",
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
...     installation_volume="16.3 L", readable_movement="0.5 mbar", leak_limit="1 L/h",
... )
>>> print(result.time_needed)
28.96 s
>>> print(result.temperature_sensitivity)
3.586 mbar/K
""",
    "tightness_test": """\
>>> import flamewright as fw
>>> result = fw.tightness_test(
...     installation_volume="16.3 L", test_pressure="20 mbar", pressure_drop="1.5 mbar",
...     test_duration="2 min", readable_movement="0.5 mbar",
... )
>>> print(result.leak_rate)
0.7239 L/h
>>> print(result.temperature_sensitivity)
3.586 mbar/K
""",
    "touch_wait": """\
>>> import flamewright as fw
>>> result = fw.touch_wait(
...     policy="house rule, invented: bare hand on painted metal", surface_temperature="75 degC",
...     time_constant="70 min", contact_temperature="48 degC",
... )
>>> print(result.wait)
47.26 min
""",
    "tube_run": """\
>>> import flamewright as fw
>>> result = fw.tube_run(
...     tube="copper 22x0.9", length="18 m",
... )
>>> print(result.bore)
20.2 mm
>>> print(result.content)
5.769 L
>>> print(result.mass)
9.557 kg
""",
    "u_gauge": """\
>>> import flamewright as fw
>>> result = fw.u_gauge(
...     limb_down="104 mm", limb_up="103 mm",
... )
>>> print(result.level_difference)
207 mm
>>> print(result.pressure)
20.26 mbar
""",
    "valve_kv": """\
>>> import flamewright as fw
>>> result = fw.valve_kv(
...     volume_flow="300 L/h", pressure_drop="5 kPa",
... )
>>> print(result.valve_kv)
1.33 m³/h
""",
    "vent_free_area": """\
>>> import flamewright as fw
>>> result = fw.vent_free_area(
...     width="225 mm", height="150 mm", free_share="55 %",
... )
>>> print(result.overall_area)
33750 mm²
>>> print(result.free_area)
18563 mm²
>>> print(result.free_share)
55 %
""",
    "ventilation_need": """\
>>> import flamewright as fw
>>> result = fw.ventilation_need(
...     rating_basis="heat_input_net", heat_input_net="28 kW", area_rate="500 mm2/kW",
...     threshold="7 kW",
... )
>>> print(result.rating_above_threshold)
21 kW
>>> print(result.free_area)
10500 mm²
""",
    "vessel_check": """\
>>> import flamewright as fw
>>> result = fw.vessel_check(
...     vessel_volume="18 L", pre_charge="0.75 bar", fill_pressure="1.0 bar",
...     system_content="180 L", highest_temperature="80 degC",
... )
>>> print(result.hot_pressure)
1.977 bar
>>> print(result.take_up)
6.75 L
""",
    "volume_fraction": """\
>>> import flamewright as fw
>>> result = fw.volume_fraction(
...     gas="carbon monoxide", mass_concentration="40 mg/m3", temperature="0 degC",
... )
>>> print(result.fraction)
32.01 ppm
""",
    "warm_up": """\
>>> import flamewright as fw
>>> result = fw.warm_up(
...     metal_mass="105 kg", water_content="11 L", casing_loss="12 W/K", pump_flow="0.25 kg/s",
...     flow_length="9 m", return_length="9 m", pipe_heat_capacity="1900 J/(m K)",
...     pipe_loss="0.9 W/(m K)", room_temperature="18 degC", block_temperature="18 degC",
...     burner_output="24 kW", cut_out_temperature="82 degC", target_temperature="70 degC",
... )
>>> print(result.time)
4.821 min
>>> print(result.heat_put_in)
6943 kJ
""",
    "water_pressure_drop": """\
>>> import flamewright as fw
>>> result = fw.water_pressure_drop(
...     tube="copper 22x0.9", fittings={"elbow 90": 6, "tee branch": 2}, volume_flow="800 L/h",
...     length="20 m",
... )
>>> print(result.velocity)
0.6934 m/s
>>> print(result.pressure_drop)
7.258 kPa
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
