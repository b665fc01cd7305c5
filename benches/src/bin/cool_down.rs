//! One cool-down of an INVENTED block and its circuits, with the moment of its event.
//! `python/cool_down.py` runs this and sets scipy beside it. Run alone with
//! `cargo run --release --bin cool_down` in this folder: each line holds the case, the number of
//! temperatures, the seconds to the event and the microseconds a call.

use flamewright::calculation::Calculation;
use flamewright::quantity::Value;
use flamewright::quantity::types::{Length, Power, ThermalConductance, ThermodynamicTemperature};
use flamewright::record::Record;
use flamewright::transient::{CoolDown, CoolDownState};
use flamewright_benches::{Contender, race};

const CALLS: usize = 200;
const ROUNDS: usize = 9;

fn main() {
    let warm = CoolDownState::read([
        ("metal_mass", "72 kg"),
        ("water_content", "15 L"),
        ("water_density", "980 kg/m³"),
        ("water_specific_heat_capacity", "4180 J/(kg·K)"),
        ("casing_loss", "6 W/K"),
        ("pump_flow", "0.15 kg/s"),
        ("flow_length", "8 m"),
        ("return_length", "8 m"),
        ("pipe_heat_capacity", "1500 J/(m·K)"),
        ("pipe_loss", "0.75 W/(m·K)"),
        ("emitter_output", "1500 W"),
        ("emitter_heat_capacity", "45 kJ/K"),
        ("block_temperature", "80 degC"),
        ("target_temperature", "72.5 degC"),
    ])
    .expect("the demonstration plant is sound");
    let cold = CoolDownState { circuit_temperature: ThermodynamicTemperature::from_si(293.15), ..warm };
    let long = CoolDownState { target_temperature: ThermodynamicTemperature::from_si(303.15), ..warm };
    let bypass = CoolDownState {
        flow_length: Length::from_si(1.9),
        return_length: Length::from_si(1.6),
        emitter_output: Power::from_si(0.0),
        target_temperature: ThermodynamicTemperature::from_si(323.15),
        ..warm
    };
    let mut calculation = CoolDown::default();
    calculation.layout.flow_cells = 12;
    calculation.layout.return_cells = 11;
    for (name, input) in [("warm", warm), ("cold", cold), ("long", long), ("bypass", bypass)] {
        let mut time = 0.0;
        let body = || {
            for call in 0..CALLS {
                // Another loss each time, so that nothing can be kept from call to call.
                let casing_loss = ThermalConductance::from_si(6.0 + 1e-12 * call as f64);
                time = calculation.evaluate(&CoolDownState { casing_loss, ..input }).expect("sound").time.si();
            }
        };
        let least = race(&mut [Contender { name, body: Box::new(body) }], CALLS, ROUNDS);
        let states = 1 + 12 + 11 + usize::from(input.emitter_output.si() > 0.0);
        println!("{name} {states} {time:.9} {:.3}", least[0] / 1000.0);
    }
}
