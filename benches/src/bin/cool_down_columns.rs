//! 100 000 variants of one cool-down (an INVENTED plant) through the columns, on one core and on
//! all, beside as many single calls. Run with `cargo run --release --bin cool_down_columns` here.

use flamewright::catalogue::{Bare, calculation, read_input};
use flamewright::node::Node;
use flamewright_benches::{Contender, race, report};
use flamewright_columns::{Column, columns};
use std::time::Instant;

const VARIANTS: usize = 100_000;
const ROUNDS: usize = 3;

fn main() {
    let settings = Node::from([("flow_cells", "12"), ("return_cells", "11")]);
    let single = calculation("cool_down").expect("known").prepare(&settings).expect("sound");
    let fields = single.entry().inputs();
    let given = Node::from([
        ("metal_mass", "72 kg"),
        ("water_content", "15 L"),
        ("casing_loss", "6 W/K"),
        ("pump_flow", "0.15 kg/s"),
        ("flow_length", "8 m"),
        ("return_length", "8 m"),
        ("pipe_heat_capacity", "1500 J/(m·K)"),
        ("pipe_loss", "0.75 W/(m·K)"),
        ("emitter_output", "1500 W"),
        ("emitter_heat_capacity", "45 kJ/K"),
        ("block_temperature", "80 degC"),
        ("circuit_temperature", "20 degC"),
        ("target_temperature", "72.5 degC"),
    ]);
    let base = read_input(fields, &given, Bare::Refused).expect("sound");
    let loss = fields.iter().position(|field| field.name == "casing_loss").expect("known");
    let losses: Vec<f64> = (0..VARIANTS).map(|row| 2.0 + row as f64 * 1e-4).collect();
    let inputs: Vec<Column<'_>> =
        (0..fields.len()).map(|field| if field == loss { Column::Values(&losses) } else { Column::Constant(base[field]) }).collect();
    let columns = columns("cool_down", &settings).expect("known");
    let one = rayon::ThreadPoolBuilder::new().num_threads(1).build().expect("a pool");
    let mut output = vec![0.0; single.entry().outputs().len()];
    let (columns, inputs) = (&columns, &inputs);
    let mut contenders = [
        Contender {
            name: "single calls",
            body: Box::new(|| {
                let mut input = base.clone();
                for value in &losses {
                    input[loss] = *value;
                    single.run(&input, &mut output);
                }
            }),
        },
        Contender {
            name: "columns, one core",
            body: Box::new(move || {
                let table = one.install(|| columns.evaluate(inputs, VARIANTS).expect("sound"));
                assert_eq!(table.refused(), 0);
            }),
        },
        Contender {
            name: "columns, all cores",
            body: Box::new(move || {
                let table = columns.evaluate(inputs, VARIANTS).expect("sound");
                assert_eq!(table.refused(), 0);
            }),
        },
    ];
    let times = race(&mut contenders, VARIANTS, ROUNDS);
    report(&contenders, &times);
    // Processor time does not shrink with more cores: what they gain is seen on the clock.
    let clock: Vec<f64> = contenders
        .iter_mut()
        .map(|contender| {
            let runs = (0..ROUNDS).map(|_| {
                let start = Instant::now();
                (contender.body)();
                start.elapsed().as_secs_f64()
            });
            runs.fold(f64::INFINITY, f64::min)
        })
        .collect();
    for (contender, seconds) in contenders.iter().zip(&clock) {
        println!("{:32} {seconds:7.3} s by the clock, {:.2} times as fast", contender.name, clock[0] / seconds);
    }
}
