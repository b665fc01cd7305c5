//! Columns give what single calls give, bit for bit, whatever stands in the neighbouring rows.

use flamewright::catalogue::calculation;
use flamewright::node::Node;
use flamewright_columns::{Column, columns};

/// Values from 0 to 1 in no visible order.
fn scatter(row: usize, salt: usize) -> f64 {
    ((row * 7_919 + salt * 104_729) % 100_003) as f64 / 100_003.0
}

#[test]
fn flue_rows_are_those_of_single_calls() {
    // Rows that are good, noticed, refused by field, refused by rule and refused by result, mixed
    // within blocks; a count that leaves the last block part full.
    let rows = 1_003;
    let oxygen: Vec<f64> = (0..rows)
        .map(|row| match row % 11 {
            3 => f64::NAN,
            7 => 0.3,
            _ => 0.2 * scatter(row, 1),
        })
        .collect();
    let carbon_dioxide: Vec<f64> = (0..rows).map(|row| if row % 3 == 0 { 0.11 * scatter(row, 2) } else { f64::NAN }).collect();
    let carbon_monoxide: Vec<f64> = (0..rows).map(|row| 0.02 * scatter(row, 3).powi(4)).collect();
    let flue: Vec<f64> = (0..rows).map(|row| 290.0 + 200.0 * scatter(row, 4)).collect();
    let air: Vec<f64> = (0..rows).map(|row| if row % 41 == 5 { f64::NAN } else { 275.0 + 25.0 * scatter(row, 5) }).collect();
    let settings = Node::from([("fuel", "G20")]);
    let inputs = [
        Column::Values(&oxygen),
        Column::Values(&carbon_dioxide),
        Column::Values(&carbon_monoxide),
        Column::Values(&flue),
        Column::Values(&air),
        Column::Constant(98_000.0),
        Column::Constant(0.5),
    ];
    let table = columns("flue_analysis", &settings).unwrap().evaluate(&inputs, rows).unwrap();

    let single = calculation("flue_analysis").unwrap().prepare(&settings).unwrap();
    let rules = single.entry().rules();
    let (mut refused, mut noticed, mut clean) = (0, 0, 0);
    for row in 0..rows {
        let input = [oxygen[row], carbon_dioxide[row], carbon_monoxide[row], flue[row], air[row], 98_000.0, 0.5];
        let mut output = vec![0.0; single.entry().outputs().len()];
        let judged = single.run(&input, &mut output);
        if judged.is_refused(rules) {
            output.fill(f64::NAN);
            refused += 1;
        } else if judged.unusual | judged.raised.0 != 0 {
            noticed += 1;
        } else {
            clean += 1;
        }
        assert_eq!(table.status[row].has_result(), !judged.is_refused(rules), "row {row}");
        for (column, expected) in table.columns.iter().zip(&output) {
            assert!(column[row].to_bits() == expected.to_bits() || column[row].is_nan() && expected.is_nan(), "row {row}");
        }
    }
    assert!(refused > 100 && noticed > 100 && clean > 100, "{refused} {noticed} {clean}");
}
