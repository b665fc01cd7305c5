//! Many variants of one plant at once: the cool-down, which integrates in time, goes through the
//! same columns as the straight-line sums, in parallel, and gives the bits of single calls.

use flamewright::catalogue::{Bare, calculation, read_input};
use flamewright::node::Node;
use flamewright_columns::{Column, columns};

/// Many hand-overs to a core: rows that take long go a block of eight at a time.
const ROWS: usize = 1003;

#[test]
fn variants_of_a_cool_down_are_those_of_single_calls() {
    let settings = Node::from([("flow_cells", "2"), ("return_cells", "1")]);
    let single = calculation("cool_down").unwrap().prepare(&settings).unwrap();
    let fields = single.entry().inputs();
    let given = Node::from([
        ("metal_mass", "72 kg"),
        ("water_content", "15 L"),
        ("casing_loss", "6 W/K"),
        ("pump_flow", "0.15 kg/s"),
        ("flow_length", "2 m"),
        ("return_length", "1.5 m"),
        ("pipe_heat_capacity", "1500 J/(m·K)"),
        ("pipe_loss", "0.75 W/(m·K)"),
        ("block_temperature", "80 degC"),
        ("target_temperature", "60 degC"),
    ]);
    let base = read_input(fields, &given, Bare::Refused).unwrap();
    let place = |name: &str| fields.iter().position(|field| field.name == name).unwrap();
    let (loss, target) = (place("casing_loss"), place("target_temperature"));
    let losses: Vec<f64> = (0..ROWS).map(|row| 2.0 + row as f64 * 1e-3).collect();
    // Every hundredth target lies below the room, and is never reached.
    let targets: Vec<f64> = (0..ROWS).map(|row| if row % 100 == 7 { 280.0 } else { 333.15 + (row % 17) as f64 }).collect();
    let inputs: Vec<Column<'_>> = (0..fields.len())
        .map(|field| match field {
            _ if field == loss => Column::Values(&losses),
            _ if field == target => Column::Values(&targets),
            _ => Column::Constant(base[field]),
        })
        .collect();
    let table = columns("cool_down", &settings).unwrap().evaluate(&inputs, ROWS).unwrap();
    assert_eq!(table.refused(), 0);
    let times = table.column("time").unwrap();
    assert_eq!(times.iter().filter(|time| time.is_nan()).count(), (0..ROWS).filter(|row| row % 100 == 7).count());
    let mut output = vec![0.0; single.entry().outputs().len()];
    for row in (0..ROWS).step_by(3) {
        let mut input = base.clone();
        (input[loss], input[target]) = (losses[row], targets[row]);
        single.run(&input, &mut output);
        for (column, expected) in table.columns.iter().zip(&output) {
            assert!(column[row].to_bits() == expected.to_bits() || column[row].is_nan() && expected.is_nan(), "row {row}");
        }
    }
}
