//! What a step shows is what it computed.

use flamewright::quantity::units::{KILOWATT, MEGAJOULE_PER_CUBIC_METRE};
use flamewright::working::{Known, Silent, Steps, Working, step};
use uom::si::f64::{Power, Pressure, VolumeRate};
use uom::si::{power::watt, pressure::pascal, volume_rate::cubic_meter_per_second};

/// Gas rate to heat input, in uom quantities; uom holds energy per volume to be a pressure.
fn heat_input<W: Working>(metered_flow: VolumeRate, factor: f64, calorific_value: Pressure, working: &mut W) -> Power {
    step!(working, let reference_flow: "\\dot V_{ref}" = metered_flow * factor, "ISO 13443");
    step!(working, let heat_input: "\\dot Q" in KILOWATT = reference_flow * calorific_value, "definition");
    heat_input
}

fn fields() -> [Known; 3] {
    [
        ("metered_flow", "\\dot V").into(),
        ("factor", "f").into(),
        Known { name: "calorific_value", symbol: "H_s", unit: Some(MEGAJOULE_PER_CUBIC_METRE), value: None },
    ]
}

#[test]
fn a_sum_is_written_down_with_its_units() {
    let (flow, value) = (VolumeRate::new::<cubic_meter_per_second>(0.0008), Pressure::new::<pascal>(39.5e6));
    let mut steps = Steps::new(fields());
    let shown = heat_input(flow, 0.95, value, &mut steps);
    assert_eq!(shown.get::<watt>().to_bits(), heat_input(flow, 0.95, value, &mut Silent).get::<watt>().to_bits());
    assert_eq!(
        steps.plain(),
        "V̇_ref = V̇ × f = 0.0008 m³/s × 0.95 = 0.00076 m³/s  [ISO 13443]\n\
         Q̇ = V̇_ref × H_s = 0.00076 m³/s × 3.95e7 J/m³ = 30020 W (30.02 kW)  [definition]\n"
    );
}
