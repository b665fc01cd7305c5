//! What a number is worth: the guide's examples, the trade's uncertainty rows, and laws that hold
//! for every function.

use flamewright::calculation::{Judged, Table};
use flamewright::catalogue::{Bare, Entry, Prepared, calculation, read_input, split};
use flamewright::explore::{Goal, goal_seek};
use flamewright::judgement::{Decision, Direction, conformity, guard_band};
use flamewright::node::Node;
use flamewright::uncertainty::{
    Binding, Chain, Covariance, Distribution, Generator, Measured, Model, coverage_factor, effective_degrees_of_freedom, first_order,
    monte_carlo, type_a_covariance,
};
use flamewright::working::Step;
use flamewright_reference::{Row, rows};

/// A function written out here, for those that are no calculation of the catalogue.
struct Function<const N: usize, const M: usize, F: Fn(&[f64; N]) -> [f64; M]>(F);

impl<const N: usize, const M: usize, F: Fn(&[f64; N]) -> [f64; M]> Model for Function<N, M, F> {
    fn inputs(&self) -> usize {
        N
    }
    fn outputs(&self) -> usize {
        M
    }
    fn compute(&self, input: &[f64], output: &mut [f64]) {
        output.copy_from_slice(&self.0(input.try_into().unwrap()));
    }
    fn range(&self, _: usize) -> (f64, f64) {
        (f64::NEG_INFINITY, f64::INFINITY)
    }
}

/// The shape of each of `N` inputs.
fn all<const N: usize>(shape: Distribution) -> [Distribution; N] {
    [shape; N]
}

/// The standard uncertainty of ± `half_width`.
fn spread(half_width: f64, shape: Distribution) -> f64 {
    Measured::exact(0.0).within("", half_width, shape).unwrap().standard()
}

fn rectangular(half_width: f64) -> f64 {
    spread(half_width, Distribution::Rectangular)
}

/// An input of a row, in the unit in which it is written.
fn given(row: &Row, name: &str) -> f64 {
    row.inputs()[name].0.parse().unwrap()
}

fn series(row: &Row, name: &str) -> Vec<f64> {
    row.inputs()[name].0.split('/').map(|r| r.parse().unwrap()).collect()
}

fn resistance_and_reactance(row: &Row) -> f64 {
    let readings = ["V", "I", "phi"].map(|name| series(row, name));
    let means = readings.clone().map(|r| Measured::repeated(&r).unwrap());
    let mut covariance = Covariance::independent(&means.clone().map(|m| m.standard()));
    for (i, j) in [(0, 1), (0, 2), (1, 2)] {
        let shared = type_a_covariance(&readings[i], &readings[j]).unwrap();
        covariance.correlate(i, j, shared / (means[i].standard() * means[j].standard())).unwrap();
    }
    let at = means.clone().map(|m| m.value);
    // Volt over milliampere, so kilo-ohm to ohm.
    let impedance = Function(|&[voltage, current, phase]: &[f64; 3]| {
        let ohm = 1e3 * voltage / current;
        [ohm * phase.cos(), ohm * phase.sin(), ohm]
    });
    let result = first_order(&impedance, &at, &covariance);
    let outputs = result.covariance();
    let of = |name: &str, names: [&str; 3]| names.iter().position(|n| *n == name).unwrap();
    let output = row.text("output");
    match output.split('_').collect::<Vec<_>>()[..] {
        ["mean", name] => at[of(name, ["V", "I", "phi"])],
        ["u", name @ ("V" | "I" | "phi")] => means[of(name, ["V", "I", "phi"])].standard(),
        ["r", a @ ("V" | "I"), b] => covariance.correlation(of(a, ["V", "I", "phi"]), of(b, ["V", "I", "phi"])),
        ["u", name] => result.standard(of(name, ["R", "X", "Z"])),
        ["r", a, b] => outputs.correlation(of(a, ["R", "X", "Z"]), of(b, ["R", "X", "Z"])),
        [name] => result.outputs()[of(name, ["R", "X", "Z"])],
        _ => panic!("{output}"),
    }
}

fn gauge_block(row: &Row) -> f64 {
    let of = |name: &str| given(row, name);
    let stated = |m: Measured, name: &str| m.within(name, of(name), Distribution::Normal).unwrap();
    let inputs = [
        stated(Measured::exact(of("l_s")), "u_l_s"),
        ["u_d0", "u_d1", "u_d2"].into_iter().fold(Measured::exact(of("d")), stated),
        Measured::exact(of("alpha_s")).within("", of("half_width_alpha"), Distribution::Rectangular).unwrap(),
        Measured::exact(0.0).within("", of("half_width_dalpha"), Distribution::Rectangular).unwrap(),
        Measured::exact(0.0).within("", of("half_width_dtheta"), Distribution::Rectangular).unwrap(),
        stated(Measured::exact(of("theta")), "u_theta").within("cycle", of("cyclic_amplitude"), Distribution::Arcsine).unwrap(),
    ];
    let length = Function(|&[standard, difference, expansion, expansion_difference, warmer, temperature]: &[f64; 6]| {
        [standard + difference - standard * (expansion_difference * temperature + expansion * warmer)]
    });
    let result = first_order(&length, &inputs.clone().map(|m| m.value), &Covariance::independent(&inputs.map(|m| m.standard())));
    match row.text("output") {
        "l" => result.outputs()[0],
        "u_l" => result.standard(0),
        other => panic!("{other}"),
    }
}

fn resistors_in_series(row: &Row) -> f64 {
    assert_eq!(given(row, "n"), 10.0);
    let total = Function(|r: &[f64; 10]| [r.iter().sum()]);
    let independent = Covariance::independent(&[given(row, "u"); 10]);
    let mut shared = independent.clone();
    for i in 0..10 {
        for j in 0..i {
            shared.correlate(i, j, given(row, "r")).unwrap();
        }
    }
    let at = [given(row, "R"); 10];
    match row.text("output") {
        "R_total" => first_order(&total, &at, &shared).outputs()[0],
        "u_total" => first_order(&total, &at, &shared).standard(0),
        "u_if_independent_wrong" => first_order(&total, &at, &independent).standard(0),
        other => panic!("{other}"),
    }
}

fn type_b(row: &Row) -> f64 {
    let a = given(row, "a");
    let exact = Measured::exact(20.0);
    let measured = match row.inputs()["distribution"].0.as_str() {
        "rectangular" => exact.within("", a, Distribution::Rectangular),
        "triangular" => exact.within("", a, Distribution::Triangular),
        "arcsine" => exact.within("", a, Distribution::Arcsine),
        "resolution" => exact.resolution(a),
        "normal_k2" => exact.certificate(a, 2.0),
        other => panic!("{other}"),
    };
    measured.unwrap().standard()
}

fn additive(row: &Row, shape: Distribution) -> f64 {
    let sum = Function(|x: &[f64; 4]| [x.iter().sum()]);
    let draws = monte_carlo(&sum, &[0.0; 4], &Covariance::independent(&[1.0; 4]), &all::<4>(shape), 200_000, 4).unwrap();
    match row.text("output") {
        "y" => draws.mean(0),
        "u" => draws.standard(0),
        "half_width_95" => {
            let (low, high) = draws.interval(0, 0.95, false);
            0.5 * (high - low)
        }
        other => panic!("{other}"),
    }
}

fn welch_satterthwaite(row: &Row) -> f64 {
    let contributions: Vec<(f64, f64)> = (1..=4).map(|i| (given(row, &format!("u{i}")), given(row, &format!("nu{i}")))).collect();
    match row.text("output") {
        "nu_eff" => effective_degrees_of_freedom(contributions),
        "u_c" => {
            let sum = Function(|x: &[f64; 4]| [x.iter().sum()]);
            let standard: Vec<f64> = contributions.iter().map(|c| c.0).collect();
            first_order(&sum, &[0.0; 4], &Covariance::independent(&standard)).standard(0)
        }
        other => panic!("{other}"),
    }
}

/// One oxygen reading behind every result: carbon dioxide, air ratio, ratio, air-free carbon monoxide, efficiency.
fn analyser(row: &Row) -> f64 {
    let of = |name: &str| given(row, name);
    let (maximum, air, a2, b) = (of("CO2_max"), of("O2_air"), of("A2"), of("B"));
    let reading = Function(|&[oxygen, monoxide, flue, room]: &[f64; 4]| {
        let dioxide = maximum * (air - oxygen) / air;
        let lambda = air / (air - oxygen);
        let loss = (flue - room) * (a2 / (21.0 - oxygen) + b);
        [dioxide, lambda, monoxide * 1e-4 / dioxide, monoxide * lambda, loss, 100.0 - loss]
    });
    let at = [of("O2"), of("CO"), of("t_flue"), of("t_air")];
    let standard = ["half_width_O2", "half_width_CO", "half_width_t", "half_width_t"].map(|name| rectangular(of(name)));
    let inputs = Covariance::independent(&standard);
    let result = first_order(&reading, &at, &inputs);
    let place = |name: &str| match name {
        "CO2_from_O2" | "CO2" => 0,
        "lambda_dry_simple" | "lambda" => 1,
        "ratio" => 2,
        "CO_air_free" | "air_free" => 3,
        "loss_net" => 4,
        "efficiency_net" | "efficiency" => 5,
        other => panic!("{other}"),
    };
    let output = row.text("output");
    if let Some(drawn) = output.strip_prefix("mc_") {
        let draws = monte_carlo(&reading, &at, &inputs, &all::<4>(Distribution::Rectangular), 100_000, 13).unwrap();
        return match drawn.strip_prefix("u_") {
            Some(name) => draws.standard(place(name)),
            None => draws.interval(place(drawn.strip_suffix("_97.5pct").unwrap()), 0.95, false).1,
        };
    }
    if let Some(pair) = output.strip_prefix("corr_") {
        let (first, second) = pair.split_once('_').unwrap();
        return result.covariance().correlation(place(first), place(second));
    }
    match output.strip_prefix("u_") {
        Some(name) => result.standard(place(name)),
        None => result.outputs()[place(output)],
    }
}

fn conformance(row: &Row) -> f64 {
    let [value, standard, limit] = ["y", "u", "limit"].map(|name| given(row, name));
    let verdict = conformity(value, standard, limit, Direction::AtMost, 0.95);
    let accepted = value <= limit - guard_band(standard, 0.95);
    assert_eq!(verdict.decision == Decision::Conforms, accepted, "{}", row.place);
    match row.text("output") {
        "P_conform" => verdict.probability,
        "acceptance_limit_95" => limit - verdict.guard_band,
        other => panic!("{other}"),
    }
}

/// Two rates by one meter: its error is one input to both.
fn one_meter_twice(row: &Row) -> f64 {
    let (meter, repeat) = (rectangular(given(row, "meter_mpe") / 100.0), given(row, "u_repeat") / 100.0);
    let (first, second) = (given(row, "rate1"), given(row, "rate2"));
    let rates = |x: &[f64; 4]| [first * (1.0 + x[0] + x[2]), second * (1.0 + x[1] + x[3])];
    let model = Function(|x: &[f64; 4]| {
        let [a, b] = rates(x);
        [a, b, a - b, a / b]
    });
    let independent = Covariance::independent(&[meter, meter, repeat, repeat]);
    let mut shared = independent.clone();
    shared.correlate(0, 1, 1.0).unwrap();
    let (same, other_meter) = (first_order(&model, &[0.0; 4], &shared), first_order(&model, &[0.0; 4], &independent));
    match row.text("output") {
        "difference" => same.outputs()[2],
        "u_difference" => same.standard(2),
        "u_difference_if_independent" => other_meter.standard(2),
        "ratio" => same.outputs()[3],
        "u_ratio" => same.standard(3),
        "correlation" => same.covariance().correlation(0, 1),
        other => panic!("{other}"),
    }
}

fn flow_and_return(row: &Row) -> f64 {
    let difference = Function(|x: &[f64; 4]| [x[0] + x[2] - x[1] - x[3]]);
    let (probe, read) = (rectangular(given(row, "half_width_cal")), given(row, "u_read"));
    let two = Covariance::independent(&[probe, probe, read, read]);
    let mut same = two.clone();
    same.correlate(0, 1, 1.0).unwrap();
    let at = [given(row, "t_flow"), given(row, "t_return"), 0.0, 0.0];
    match row.text("output") {
        "dT" => first_order(&difference, &at, &two).outputs()[0],
        "u_dT_same_probe" => first_order(&difference, &at, &same).standard(0),
        "u_dT_two_probes" => first_order(&difference, &at, &two).standard(0),
        other => panic!("{other}"),
    }
}

#[test]
fn every_uncertainty_row_is_reproduced() {
    let mut checked = 0;
    for row in rows("trade/uncertainty.csv") {
        let got = match row.text("kind") {
            "gum_H2_correlated" | "gum_H2_means" => resistance_and_reactance(&row),
            "gum_H1_gauge_block" => gauge_block(&row),
            "gum_5_2_2_fully_correlated" => resistors_in_series(&row),
            "type_B_standard_uncertainty" => type_b(&row),
            "s1_additive_normal" => additive(&row, Distribution::Normal),
            "s1_additive_rectangular" => additive(&row, Distribution::Rectangular),
            "welch_satterthwaite" => welch_satterthwaite(&row),
            "analyser_propagation" => analyser(&row),
            "conformance_probability" => conformance(&row),
            "same_meter_two_rates" => one_meter_twice(&row),
            "flow_return_difference" => flow_and_return(&row),
            other => panic!("{}: nothing computes {other}", row.place),
        };
        assert!(row.agrees(got), "{}: {} is {got}, not {}", row.place, row.text("output"), row.text("value"));
        checked += 1;
    }
    assert_eq!(checked, 141);
}

#[test]
fn drawn_shapes_have_the_mean_and_spread_that_are_stated() {
    let shapes = [Distribution::Normal, Distribution::Rectangular, Distribution::Triangular, Distribution::Arcsine];
    let same = Function(|x: &[f64; 4]| *x);
    let draws = monte_carlo(&same, &[5.0; 4], &Covariance::independent(&[0.5; 4]), &shapes, 100_000, 3).unwrap();
    // Furthest from the middle, in standard deviations: √3, √6, √2.
    for (j, furthest) in [f64::INFINITY, 3_f64.sqrt(), 6_f64.sqrt(), 2_f64.sqrt()].into_iter().enumerate() {
        assert!((draws.mean(j) - 5.0).abs() < 5.0 * 0.5 / 1e5_f64.sqrt(), "{:?}", shapes[j]);
        assert!((draws.standard(j) / 0.5 - 1.0).abs() < 5.0 / 2e5_f64.sqrt(), "{:?}: {}", shapes[j], draws.standard(j));
        let most = draws.of(j).iter().fold(0.0, |most: f64, d| most.max((d - 5.0).abs() / 0.5));
        assert!(most <= furthest * (1.0 + 1e-12) && most > 0.97 * furthest.min(3.0), "{:?}: {most}", shapes[j]);
    }
}

/// A number from -1 to 1.
fn signed(generator: &mut Generator) -> f64 {
    2.0 * generator.uniform() - 1.0
}

#[test]
fn linear_functions_are_exact_and_shares_sum_to_one() {
    let mut generator = Generator::new(11);
    for _ in 0..500 {
        let [slopes, at] = [(); 2].map(|()| core::array::from_fn::<f64, 5, _>(|_| signed(&mut generator)));
        let standard: [f64; 5] = core::array::from_fn(|_| 0.1 * generator.uniform());
        let linear = Function(|x: &[f64; 5]| [0.3 + x.iter().zip(&slopes).map(|(x, c)| c * x).sum::<f64>()]);
        let mut inputs = Covariance::independent(&standard);
        let r = signed(&mut generator);
        inputs.correlate(1, 3, r).unwrap();
        let result = first_order(&linear, &at, &inputs);
        let variance =
            (0..5).map(|i| (slopes[i] * standard[i]).powi(2)).sum::<f64>() + 2.0 * r * slopes[1] * standard[1] * slopes[3] * standard[3];
        let error = result.standard(0) - variance.sqrt();
        // Nothing but rounding: that of the sum over the shortest step.
        let largest = standard.iter().fold(0.0, |m: f64, s| m.max(*s));
        assert!(error.abs() <= 1e-9 * largest, "{error:e}");
        let budget = result.budget(0);
        assert!((budget.iter().sum::<f64>() - 1.0).abs() < 1e-12, "{budget:?}");
        for (i, slope) in slopes.iter().enumerate() {
            let step = (0.01 * standard[i]).max(6e-6 * at[i].abs());
            assert!((result.sensitivity(0, i) - slope).abs() <= 4.0 * f64::EPSILON * 5.0 / step, "{i}");
        }
    }
}

#[test]
fn perfect_correlation_adds_linearly() {
    let model = Function(|x: &[f64; 2]| [x[0] + x[1], x[0] - x[1]]);
    let mut generator = Generator::new(12);
    for _ in 0..50 {
        let standard = [generator.uniform(), generator.uniform()];
        for r in [1.0, -1.0] {
            let mut inputs = Covariance::independent(&standard);
            inputs.correlate(0, 1, r).unwrap();
            let wanted = [(standard[0] + r * standard[1]).abs(), (standard[0] - r * standard[1]).abs()];
            let result = first_order(&model, &[2.0, 3.0], &inputs);
            // The draws are on one line too, so that their spread is in the same proportion.
            let draws = monte_carlo(&model, &[2.0, 3.0], &inputs, &[], 1000, 5).unwrap();
            let drawn = draws.standard(0) / draws.standard(1);
            assert!((drawn * wanted[1] / wanted[0] - 1.0).abs() < 1e-6, "{drawn} {wanted:?}");
            for (j, wanted) in wanted.into_iter().enumerate() {
                assert!((result.standard(j) - wanted).abs() < 1e-7 * (standard[0] + standard[1]), "{r}: {}", result.standard(j));
            }
        }
    }
    let mut inputs = Covariance::independent(&[1.0, 1.0, 1.0]);
    for (i, j, r) in [(0, 1, 1.0), (1, 2, 1.0), (0, 2, -1.0)] {
        inputs.correlate(i, j, r).unwrap();
    }
    let three = Function(|x: &[f64; 3]| [x[0] + x[1] + x[2]]);
    assert!(monte_carlo(&three, &[0.0; 3], &inputs, &[], 10, 1).is_err(), "correlations that contradict each other");
}

fn prepare(name: &str, fields: &[(&str, &str)]) -> (Box<dyn Prepared>, Vec<f64>) {
    let entry = calculation(name).unwrap();
    let table = Node::Table(fields.iter().map(|(k, v)| ((*k).to_string(), Node::from(*v))).collect());
    let (settings, fields) = split(entry, &table).unwrap();
    (entry.prepare(&settings).unwrap(), read_input(entry.inputs(), &fields, Bare::Refused).unwrap())
}

const FLUE: [(&str, &str); 5] = [
    ("fuel", "G20"),
    ("oxygen_dry", "5.2 %"),
    ("carbon_monoxide_dry", "42 ppm"),
    ("flue_temperature", "148 degC"),
    ("air_temperature", "19 degC"),
];

fn input_place(prepared: &dyn Prepared, name: &str) -> usize {
    prepared.entry().inputs().iter().position(|f| f.name == name).unwrap()
}

fn output_place(prepared: &dyn Prepared, name: &str) -> usize {
    prepared.entry().outputs().iter().position(|f| f.name == name).unwrap()
}

fn uncertain(prepared: &dyn Prepared, standard: &[(&str, f64)]) -> Covariance {
    let mut all = vec![0.0; prepared.entry().inputs().len()];
    for (name, u) in standard {
        all[input_place(prepared, name)] = *u;
    }
    Covariance::independent(&all)
}

#[test]
fn results_of_one_carbon_monoxide_reading_correlate_at_one() {
    let (flue, at) = prepare("flue_analysis", &FLUE);
    let result = first_order(&*flue, &at, &uncertain(&*flue, &[("carbon_monoxide_dry", 5e-6)]));
    let (ratio, air_free) = (output_place(&*flue, "carbon_monoxide_ratio"), output_place(&*flue, "carbon_monoxide_air_free"));
    assert!(result.standard(ratio) > 0.0 && result.standard(air_free) > 0.0);
    let r = result.covariance().correlation(ratio, air_free);
    assert!((r - 1.0).abs() < 1e-12, "{r}");
    let budget = result.budget(ratio);
    assert!((budget[input_place(&*flue, "carbon_monoxide_dry")] - 1.0).abs() < 1e-12);
}

#[test]
fn first_order_and_draws_agree_and_draws_repeat() {
    let (flue, at) = prepare("flue_analysis", &FLUE);
    let inputs =
        uncertain(&*flue, &[("oxygen_dry", 2e-4), ("carbon_monoxide_dry", 1e-6), ("flue_temperature", 0.2), ("air_temperature", 0.2)]);
    const TRIALS: usize = 40_000;
    let linear = first_order(&*flue, &at, &inputs);
    let draws = monte_carlo(&*flue, &at, &inputs, &[], TRIALS, 2).unwrap();
    let mut compared = 0;
    for (j, field) in flue.entry().outputs().iter().enumerate() {
        let u = linear.standard(j);
        // Not those that nothing moves, and not those without a value.
        if u.is_nan() || u <= 1e-9 * linear.outputs()[j].abs() {
            continue;
        }
        // The standard error of a standard deviation of normal draws is u/√(2n).
        let error = (draws.standard(j) / u - 1.0).abs();
        assert!(error < 5.0 / (2.0 * TRIALS as f64).sqrt(), "{}: {} {u}", field.name, draws.standard(j));
        assert!((draws.mean(j) - linear.outputs()[j]).abs() < 5.0 * u / (TRIALS as f64).sqrt(), "{}", field.name);
        let (low, high) = draws.interval(j, 0.95, false);
        let (short_low, short_high) = draws.interval(j, 0.95, true);
        assert!(short_high - short_low <= high - low, "{}", field.name);
        let budget: f64 = linear.budget(j).iter().sum();
        assert!((budget - 1.0).abs() < 1e-12, "{}: {budget}", field.name);
        compared += 1;
    }
    assert!(compared >= 12, "{compared} outputs compared");
    let again = |seed| monte_carlo(&*flue, &at, &inputs, &[], 1000, seed).unwrap();
    let bits = |draws: &flamewright::uncertainty::Draws| {
        (0..draws.outputs()).flat_map(|j| draws.of(j).to_vec()).map(f64::to_bits).collect::<Vec<_>>()
    };
    assert_eq!(bits(&again(9)), bits(&again(9)));
    assert_ne!(bits(&again(9)), bits(&again(10)));
}

#[test]
fn the_shortest_interval_of_a_skewed_result_is_shorter() {
    let square = Function(|x: &[f64; 1]| [x[0] * x[0]]);
    let draws = monte_carlo(&square, &[0.0], &Covariance::independent(&[1.0]), &[], 20_000, 8).unwrap();
    let (low, high) = draws.interval(0, 0.95, false);
    let (short_low, short_high) = draws.interval(0, 0.95, true);
    assert!(short_high - short_low < 0.9 * (high - low));
    // Chi-squared with one degree of freedom: 0.001 to 5.02, and 0 to 3.84.
    assert!((high - 5.02).abs() < 0.25 && (short_high - 3.84).abs() < 0.2 && short_low < 0.01, "{low} {high} {short_low} {short_high}");
}

/// A function in place of the density of water by its temperature.
struct Shaped<F: Fn(f64) -> f64>(Box<dyn Prepared>, F);

impl<F: Fn(f64) -> f64 + Send + Sync> Prepared for Shaped<F> {
    fn entry(&self) -> &'static dyn Entry {
        self.0.entry()
    }
    fn compute(&self, input: &[f64], output: &mut [f64]) {
        output.fill((self.1)(input[0]));
    }
    fn run(&self, input: &[f64], output: &mut [f64]) -> Judged {
        self.compute(input, output);
        Judged { undefined: output[0].is_nan(), ..Judged::default() }
    }
    fn steps(&self, input: &[f64]) -> Result<Vec<Step>, flamewright::Error> {
        self.0.steps(input)
    }
    fn tables(&self, input: &[f64]) -> Vec<Table> {
        self.0.tables(input)
    }
}

/// Seeks `wanted` of a shape of the temperature over 300 K from 273.15 K.
fn sought(shape: impl Fn(f64) -> f64 + Send + Sync + Copy, wanted: f64) -> Result<Goal, String> {
    let shaped = Shaped(calculation("liquid_water").unwrap().prepare(&Node::Table(Vec::new())).unwrap(), move |t| shape(t - 300.0));
    let goal = goal_seek(&shaped, &[f64::NAN, 2e5], "temperature", 280.0, 330.0, "density", wanted).map_err(|e| e.to_string())?;
    assert_eq!(goal.output[0].to_bits(), shape(goal.value - 300.0).to_bits());
    assert!((goal.output[0] - wanted).abs() <= 1e-10 * if wanted == 0.0 { 1e3 } else { wanted.abs() });
    Ok(goal)
}

#[test]
fn a_wanted_value_that_is_jumped_over_is_not_found_and_both_sides_are_named() {
    let jump = |x: f64| if x < 1.2345 { 900.0 + x } else { 950.0 + x };
    let text = sought(jump, 920.0).unwrap_err();
    assert!(
        text.contains("density was 920 kg/m³ nowhere that was looked at: it jumps over that at temperature = 28.0845 °C")
            && text.contains("from 901.2345 kg/m³ just below to 951.2345 kg/m³ just above"),
        "{text}"
    );
    // So small a jump that seven digits do not show it.
    let text = sought(|x: f64| if x < 1.2 { 900.0 - 2e-6 + x / 1e3 } else { 900.0 + x / 1e3 }, 900.0012 - 1e-6).unwrap_err();
    assert!(text.contains("900.001199 kg/m³") && text.contains("900.001198 kg/m³ just below to 900.0012 kg/m³ just above"), "{text}");
    // What is wanted lies so near one side that seven digits do not tell them apart.
    let text = sought(|x: f64| if x < 1.2 { 900.0 } else { 950.0 }, 900.0 + 1e-6).unwrap_err();
    assert!(text.contains("was 900.000001 kg/m³ nowhere") && text.contains("from 900 kg/m³ just below"), "{text}");
    // Behind the jump the value is met.
    let goal = sought(|x: f64| if x < 1.2345 { 900.0 + x } else { 950.0 - 5.0 * x }, 920.0).unwrap();
    assert!((goal.value - 306.0).abs() < 1e-9 && !goal.several);
    // Through a pole the sign changes without a value between.
    assert!(sought(|x: f64| 1.0 / (x - 1.1), 0.0).unwrap_err().contains("jumps over that"));
}

#[test]
fn a_range_that_is_none_is_refused() {
    let water = calculation("liquid_water").unwrap().prepare(&Node::Table(Vec::new())).unwrap();
    let field = &water.entry().inputs()[0];
    let seek = |low, high| goal_seek(&*water, &[f64::NAN, 2e5], "temperature", low, high, "density", 983.0);
    let outside =
        [(330.0, 330.0), (340.0, 330.0), (field.minimum - 1.0, 350.0), (300.0, field.maximum + 1.0), (f64::NAN, 330.0), (300.0, f64::NAN)];
    for (low, high) in outside {
        let text = seek(low, high).unwrap_err().to_string();
        assert!(text.contains("must be ascending and lie within"), "{low} to {high}: {text}");
    }
    assert!(seek(field.minimum, 350.0).is_ok() && seek(300.0, field.maximum).is_ok());
}

#[test]
fn stretches_without_a_value_are_searched_up_to_their_edges() {
    // No place looked at lies between the wanted value and the edge.
    let goal = sought(|x: f64| if x.abs() < 0.3 { f64::NAN } else { 900.0 + x }, 900.301).unwrap();
    assert!((goal.value - 300.301).abs() < 1e-9);
    let goal = sought(|x: f64| if x.abs() > 0.9 { f64::NAN } else { 900.0 + x }, 899.11).unwrap();
    assert!((goal.value - 299.11).abs() < 1e-9);
    // A hole between two places looked at, which the wanted value falls into or beside.
    let hole = |x: f64| if (0.1..0.2).contains(&x) { f64::NAN } else { 900.0 + x };
    let text = sought(hole, 900.15).unwrap_err();
    assert!(
        text.contains("it is 900.1 kg/m³ at temperature = 26.95 °C and 900.2 kg/m³ at 27.05 °C, and has no value in between"),
        "{text}"
    );
    // Beside the hole and again where the output falls: the lower one is the answer.
    for (wanted, at) in [(900.05, 300.05), (900.25, 300.25)] {
        let goal = sought(|x: f64| if x < 10.0 { hole(x) } else { 910.0 - (x - 10.0) }, wanted).unwrap();
        assert!((goal.value - at).abs() < 1e-9 && goal.several, "{wanted}: {}", goal.value);
    }
    // A hole wider than the steps, in which places were looked at.
    let text = sought(|x: f64| if x.abs() < 2.0 { f64::NAN } else { 900.0 + x }, 900.5).unwrap_err();
    assert!(text.contains("it is 898 kg/m³ at temperature = 24.85 °C and 902 kg/m³ at 28.85 °C, and has no value in between"), "{text}");
    assert!((sought(hole, 900.05).unwrap().value - 300.05).abs() < 1e-9);
    assert!((sought(hole, 900.25).unwrap().value - 300.25).abs() < 1e-9);
}

#[test]
fn peaks_between_the_places_looked_at_are_found() {
    // The peak stands between two places; half a place beside it the value is below what is wanted.
    let peak = |x: f64| 900.0 - (x - 0.21) * (x - 0.21);
    let goal = sought(peak, 900.0 - 1e-4).unwrap();
    assert!((goal.value - 300.20).abs() < 1e-6 && goal.several, "{}", goal.value);
    let goal = sought(peak, 900.0).unwrap();
    assert!((goal.value - 300.21).abs() < 1e-4);
    assert!(sought(peak, 900.0 + 1e-4).unwrap_err().contains("to 900 kg/m³, and 900.0001 kg/m³ is wanted"));
    // So near above it that it counts as met, as 1e-10 of it does.
    assert!((sought(peak, 900.0 + 2e-8).unwrap().value - 300.21).abs() < 1e-4);
    assert!(sought(peak, 900.0 + 2e-7).is_err());
    // A valley, and one at the end of the range.
    assert!((sought(|x| 800.0 - peak(x), -100.0 + 1e-6).unwrap().value - 300.209).abs() < 1e-6);
    assert!((sought(|x: f64| (x + 19.99) * (x + 19.99), 1e-5).unwrap().value - 280.01).abs() < 0.01);
}

#[test]
fn what_stands_up_beside_a_jump_or_a_hole_between_the_places_looked_at_is_found() {
    // Places are looked at at 1.094 and 1.875: the wanted value lies between the first and the jump, or
    // between the jump and the second.
    for (wanted, at) in [(901.15, 301.15), (841.25, 301.25)] {
        let goal = sought(|x: f64| if x < 1.2 { 900.0 + x } else { 840.0 + x }, wanted);
        assert!((goal.unwrap().value - at).abs() < 1e-9, "{wanted}");
    }
    assert!(sought(|x: f64| if x < 1.2 { 900.0 + x } else { 840.0 + x }, 875.0).unwrap_err().contains("nowhere that was looked at"));
    // A hole and a fall behind it.
    let fall = |x: f64| if (1.2..1.3).contains(&x) { f64::NAN } else { 900.0 + x - if x < 1.25 { 0.0 } else { 60.0 } };
    assert!((sought(fall, 901.15).unwrap().value - 301.15).abs() < 1e-9);
    assert!((sought(fall, 841.35).unwrap().value - 301.35).abs() < 1e-9);
}

/// What `sought` gives, and how often the shape was evaluated for it.
fn counted(shape: fn(f64) -> f64, wanted: f64) -> (Result<Goal, String>, u32) {
    let calls = std::sync::atomic::AtomicU32::new(0);
    let goal = sought(
        |x: f64| {
            calls.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
            shape(x)
        },
        wanted,
    );
    (goal, calls.into_inner())
}

/// 65 places are looked at, and one answer is checked; halving alone takes some 44 more for each answer.
#[test]
fn a_smooth_output_is_narrowed_in_few_evaluations() {
    for (wanted, answers, shape) in
        [(3.0, 1, (|x| x * x * x) as fn(f64) -> f64), (1e-3, 1, f64::exp), (900.7, 1, |x| 900.0 + x), (0.0, 2, f64::sin)]
    {
        let (goal, calls) = counted(shape, wanted);
        assert_eq!(goal.unwrap().several, answers == 2);
        // One more, by which the test looks at the answer.
        let narrowing = calls - 65 - 1 - 1;
        assert!(narrowing <= 27 * answers, "{wanted}: {narrowing} evaluations");
    }
    // That there is no answer costs two places more for each step, and forty at each end or peak.
    for (wanted, peaks, shape) in [(1e6, 1, (|x| x * x * x) as fn(f64) -> f64), (-1.0, 1, f64::exp), (1.5, 9, f64::sin)] {
        let (goal, calls) = counted(shape, wanted);
        println!("{wanted}: {calls}");
        assert!(goal.is_err() && calls <= 65 + 2 * 64 + 42 * peaks, "{wanted}: {calls} evaluations");
    }
}

#[test]
fn steep_and_vanishing_outputs_are_held_to_the_same_rule() {
    // Nothing is relative to zero: the largest output seen is.
    assert!(sought(|x| 1e3 * (x - 0.1) / 30.0, 0.0).is_ok());
    // So steep that neighbouring inputs give outputs further apart than the rule allows.
    assert!(sought(|x| 1e8 * (x - 0.1), 1e-3).unwrap_err().contains("density was 0.001 kg/m³ nowhere that was looked at"));
    assert!(sought(|x| 1e-6 * (x - 0.1), 1e-9).is_ok());
    // The same everywhere: any input gives it.
    let level = sought(|_| 5.0, 5.0).unwrap();
    assert!(level.value == 280.0 && level.several);
    assert!(sought(|_| 5.0, 6.0).unwrap_err().contains("runs from 5 kg/m³ to 5 kg/m³, and 6 kg/m³ is wanted"));
}

#[test]
fn statements_of_an_instrument_become_standard_uncertainties_and_degrees_of_freedom() {
    let repeated = Measured::repeated(&[10.0, 11.0, 12.0, 13.0]).unwrap();
    assert!((repeated.standard() - (5.0_f64 / 3.0 / 4.0).sqrt()).abs() < 1e-15);
    assert_eq!(repeated.freedom(), 3.0);
    let stated = |larger: bool| Measured::exact(-20.0).accuracy(0.05, 0.3, larger).unwrap().standard() * 3_f64.sqrt();
    assert!((stated(true) - 1.0).abs() < 1e-15 && (stated(false) - 1.3).abs() < 1e-15);
    let certified = Measured::exact(5.0).certificate(0.4, 2.0).unwrap();
    assert!((certified.standard() - 0.2).abs() < 1e-15 && certified.freedom().is_infinite());
    // Two of three degrees of freedom each, and a statement taken as exact.
    assert!((effective_degrees_of_freedom([(1.0, 3.0), (1.0, 3.0)]) - 6.0).abs() < 1e-12);
    assert!((effective_degrees_of_freedom([(1.0, 3.0), (1.0, f64::INFINITY)]) - 12.0).abs() < 1e-12);
}

#[test]
fn coverage_factors_are_those_of_the_guide() {
    // JCGM 100:2008 table G.2, two decimals, from memory; 68.27, 95.45 and 99.73 % are those of 1, 2 and 3 standard deviations.
    let table = [
        (0.682_689_5, [(1.0, 1.84), (2.0, 1.32), (10.0, 1.05)]),
        (0.95, [(1.0, 12.71), (4.0, 2.78), (20.0, 2.09)]),
        (0.954_499_7, [(1.0, 13.97), (3.0, 3.31), (10.0, 2.28)]),
        (0.99, [(1.0, 63.66), (5.0, 4.03), (50.0, 2.68)]),
        (0.997_300_2, [(1.0, 235.80), (5.0, 5.51), (100.0, 3.077)]),
    ];
    for (coverage, line) in table {
        for (freedom, k) in line {
            assert!(
                (coverage_factor(coverage, freedom) - k).abs() <= 0.005,
                "{coverage} {freedom}: {}",
                coverage_factor(coverage, freedom)
            );
        }
    }
    assert!((coverage_factor(0.95, f64::INFINITY) - 1.959_964).abs() < 1e-6);
    for (coverage, freedom) in [(0.0, 5.0), (1.0, 5.0), (f64::NAN, 5.0), (0.95, 0.9), (0.95, f64::NAN)] {
        assert!(coverage_factor(coverage, freedom).is_nan(), "{coverage} {freedom}");
    }
}

#[test]
fn contributions_known_from_few_readings_leave_as_many_degrees_of_freedom_as_in_the_guide() {
    // JCGM 100:2008 H.1.6: 25, 9.7, 2.9 and 16.6 nm leave 16.7.
    let gauge_block = effective_degrees_of_freedom([(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)]);
    assert!((gauge_block - 16.7).abs() < 0.1, "{gauge_block}");
    assert!(effective_degrees_of_freedom([(1.0, f64::INFINITY)]).is_infinite());
    // One reading's mean through a model with one input keeps its own.
    let readings = Measured::repeated(&[20.1, 20.3, 20.2, 20.6, 20.3]).unwrap();
    let double = Function(|x: &[f64; 2]| [2.0 * x[0] + x[1]]);
    let of = |other: f64| first_order(&double, &[readings.value, 1.0], &Covariance::independent(&[readings.standard(), other]));
    assert!((of(0.0).degrees_of_freedom(0, &[4.0, f64::INFINITY]) - 4.0).abs() < 1e-9);
    // As much again that is known exactly doubles the variance, so four times the degrees.
    assert!((of(2.0 * readings.standard()).degrees_of_freedom(0, &[4.0, f64::INFINITY]) - 16.0).abs() < 1e-6);
    assert!(of(1.0).degrees_of_freedom(0, &[f64::INFINITY; 2]).is_infinite());
}

#[test]
fn what_no_instrument_can_state_is_refused() {
    let exact = || Measured::exact(5.0);
    for bad in [-1e-9, f64::NAN, f64::INFINITY] {
        assert!(exact().within("a", bad, Distribution::Rectangular).is_err(), "{bad}");
        assert!(exact().resolution(bad).is_err() && exact().certificate(bad, 2.0).is_err() && exact().certificate(1.0, bad).is_err());
    }
    assert!(exact().certificate(1.0, 0.0).is_err());
    assert_eq!(exact().within("a", 0.0, Distribution::Normal).unwrap().standard(), 0.0);
    assert!(Measured::repeated(&[1.0]).is_err() && Measured::repeated(&[1.0, f64::NAN]).is_err());
    assert!(type_a_covariance(&[1.0, 2.0], &[1.0]).is_err() && type_a_covariance(&[1.0], &[1.0]).is_err());
    // Two pairs are enough: 20.0 and 20.2 against 5.0 and 5.4, half the product of the differences over n.
    assert!((type_a_covariance(&[20.0, 20.2], &[5.0, 5.4]).unwrap() - 0.2 * 0.4 / 2.0 / 2.0).abs() < 1e-15);
    // A step is as wide as its ends are apart: ± half of it.
    assert!((exact().resolution(1.2).unwrap().standard() - 0.6 / 3_f64.sqrt()).abs() < 1e-15);
    // The shape of one contribution is kept; several add up to a bell.
    let one = exact().within("a", 1.0, Distribution::Arcsine).unwrap();
    assert_eq!(one.distribution(), Distribution::Arcsine);
    assert_eq!(one.within("b", 1.0, Distribution::Arcsine).unwrap().distribution(), Distribution::Normal);
    for shape in [Distribution::Normal, Distribution::Rectangular, Distribution::Triangular, Distribution::Arcsine] {
        assert_eq!(Distribution::of_word(shape.word()).unwrap(), shape);
    }
    assert!(Distribution::of_word("bell").is_err());
}

#[test]
fn a_covariance_holds_what_was_stated_and_its_factor_gives_it_back() {
    let standard = [0.5, 2.0, 3.0, 0.0];
    let mut matrix = Covariance::independent(&standard);
    for (i, j, r) in [(0, 1, 0.3), (2, 0, -0.6), (1, 2, 0.4)] {
        matrix.correlate(i, j, r).unwrap();
        assert!((matrix.get(i, j) - r * standard[i] * standard[j]).abs() < 1e-15 && matrix.get(i, j) == matrix.get(j, i));
        assert!((matrix.correlation(i, j) - r).abs() < 1e-15);
    }
    assert_eq!((matrix.size(), matrix.standard(1), matrix.get(0, 4), matrix.get(4, 0), matrix.correlation(0, 3)), (4, 2.0, 0.0, 0.0, 0.0));
    for (i, j, r) in [(1, 1, 0.5), (0, 4, 0.5), (4, 0, 0.5), (0, 1, 1.0 + 1e-9), (0, 1, -1.0 - 1e-9), (0, 1, f64::NAN)] {
        assert!(matrix.clone().correlate(i, j, r).is_err(), "{i} {j} {r}");
    }
    // Any correlations that do not contradict each other, fully correlated ones too.
    let factored = |r: [f64; 3]| {
        let mut matrix = Covariance::independent(&standard[..3]);
        for ((i, j), r) in [(0, 1), (0, 2), (1, 2)].into_iter().zip(r) {
            matrix.correlate(i, j, r).unwrap();
        }
        let lower = matrix.factor().map_err(|e| e.to_string())?;
        for i in 0..3 {
            for j in 0..3 {
                let product: f64 = (0..3).map(|k| lower[i * 3 + k] * lower[j * 3 + k]).sum();
                assert!((product - matrix.get(i, j)).abs() < 1e-9 * standard[i] * standard[j], "{r:?}: {i} {j}");
                assert!(j <= i || lower[i * 3 + j] == 0.0);
            }
        }
        Ok::<(), String>(())
    };
    for good in [[0.3, -0.6, 0.4], [0.0, 0.0, 0.0], [1.0, 0.5, 0.5], [-1.0, 0.5, -0.5], [1.0, 1.0, 1.0], [0.9, 0.9, 0.7]] {
        assert_eq!(factored(good), Ok(()), "{good:?}");
    }
    // Of four, each with its own correlations, and one of them exact.
    let mut four = Covariance::independent(&[1.0, 2.0, 0.5, 3.0, 0.0]);
    for (i, j, r) in [(0, 1, 0.3), (0, 2, -0.2), (0, 3, 0.5), (1, 2, 0.6), (1, 3, -0.1), (2, 3, 0.25)] {
        four.correlate(i, j, r).unwrap();
    }
    let lower = four.factor().unwrap();
    for (i, j) in (0..5).flat_map(|i| (0..5).map(move |j| (i, j))) {
        let product: f64 = (0..5).map(|k| lower[i * 5 + k] * lower[j * 5 + k]).sum();
        assert!((product - four.get(i, j)).abs() < 1e-12, "{i} {j}: {product}");
    }
    // Where the second goes with the first, it goes with the third as the first does.
    for contradiction in [[0.9, 0.9, -0.9], [1.0, 0.5, 0.4], [-1.0, 0.5, 0.5], [1.0, 1.0, 0.999], [0.9, 0.9, 0.5]] {
        assert!(factored(contradiction).is_err(), "{contradiction:?}");
    }
}

#[test]
fn a_chain_is_its_links_one_behind_the_other() {
    let make = |name: &str| calculation(name).unwrap().prepare(&Node::Table(Vec::new())).unwrap();
    let (boiling, water) = (make("boiling_point"), make("liquid_water"));
    let mut chain = Chain::new();
    let gauge = chain.input("water_pressure");
    let barometer = chain.input("barometric_pressure");
    assert_eq!((gauge, barometer, chain.names().len()), (0, 1, 2));
    let first =
        chain.link(make("boiling_point"), vec![Binding::Input(gauge), Binding::Input(barometer), Binding::Fixed(f64::NAN)]).unwrap();
    let at_boiling = chain.output_of(first, "boiling_point").unwrap();
    let temperature = Binding::Output { link: first, output: at_boiling };
    let second = chain.link(make("liquid_water"), vec![temperature, Binding::Fixed(20e5)]).unwrap();
    // Also fed with a basic input of the first: the narrower range holds.
    let third = chain.link(make("liquid_water"), vec![Binding::Fixed(300.0), Binding::Input(barometer)]).unwrap();
    for (i, field) in water.entry().inputs().iter().enumerate() {
        assert_eq!(Model::range(&*water, i), (field.minimum, field.maximum));
    }
    let (of_boiling, of_water) = (&boiling.entry().inputs()[1], &water.entry().inputs()[1]);
    assert_eq!(chain.range(barometer), (of_boiling.minimum.max(of_water.minimum), of_boiling.maximum.min(of_water.maximum)));

    let at = [1.5e5, 1.0e5];
    let (mut boils, mut dense, mut cold) = (vec![0.0; boiling.entry().outputs().len()], vec![0.0; 8], vec![0.0; 8]);
    boiling.compute(&[at[0], at[1], f64::NAN], &mut boils);
    water.compute(&[boils[at_boiling], 20e5], &mut dense);
    water.compute(&[300.0, at[1]], &mut cold);
    let mut all = vec![0.0; chain.outputs()];
    chain.compute(&at, &mut all);
    let bits = |values: &[f64]| values.iter().map(|v| if v.is_nan() { 0 } else { v.to_bits() }).collect::<Vec<_>>();
    assert_eq!(bits(&all), bits(&[boils.clone(), dense.clone(), cold.clone()].concat()));
    assert_eq!((chain.inputs(), chain.first_place(second), chain.first_place(third)), (2, boils.len(), boils.len() + 8));
    assert_eq!(all[chain.place(second, "density").unwrap()].to_bits(), dense[0].to_bits());
    assert_eq!((chain.place(second, "boiling_point"), chain.place(9, "density"), chain.first_place(9)), (None, None, 0));
    assert_eq!(chain.link_inputs(&at)[1..], [vec![boils[at_boiling], 20e5], vec![300.0, at[1]]]);
    assert_eq!(chain.values_of(&[temperature, Binding::Input(barometer), Binding::Fixed(7.0)], &at), [boils[at_boiling], at[1], 7.0]);

    // What is shared stays correlated: both densities follow the one barometer.
    let worth = first_order(&chain, &at, &Covariance::independent(&[0.0, 500.0]));
    let (hot, cool) = (chain.place(second, "density").unwrap(), chain.place(third, "density").unwrap());
    assert!((worth.covariance().correlation(hot, cool) + 1.0).abs() < 1e-9);

    for (bindings, why) in [
        (vec![Binding::Fixed(300.0)], "2 are needed"),
        (vec![Binding::Fixed(300.0), Binding::Input(2)], "no such basic input"),
        (vec![Binding::Fixed(300.0), Binding::Output { link: 3, output: 0 }], "no such earlier output"),
        (vec![Binding::Fixed(300.0), Binding::Output { link: 0, output: 99 }], "no such earlier output"),
        (vec![Binding::Fixed(300.0), temperature], "is needed"),
    ] {
        let text = chain.link(make("liquid_water"), bindings.clone()).unwrap_err().to_string();
        assert!(text.contains(why), "{bindings:?}: {text}");
    }
}

#[test]
fn an_interval_is_between_the_places_that_the_guide_names() {
    // JCGM 101:2008 7.7: of M values in order, from number r to number r + pM, with r = (M - pM)/2 rounded up.
    let ladder = Function(|x: &[f64; 1]| [x[0]]);
    for (trials, inside, first) in [(10, 8, 1), (11, 9, 1), (20, 19, 1), (100, 95, 3), (101, 96, 3)] {
        let draws = monte_carlo(&ladder, &[0.0], &Covariance::independent(&[1.0]), &[], trials, 3).unwrap();
        let mut sorted = draws.of(0).to_vec();
        sorted.sort_by(f64::total_cmp);
        let coverage = inside as f64 / trials as f64;
        assert_eq!(draws.interval(0, coverage, false), (sorted[first - 1], sorted[first - 1 + inside]), "{trials}");
        let (low, high) = draws.interval(0, coverage, true);
        let narrowest = (0..trials - inside).map(|r| sorted[r + inside] - sorted[r]).fold(f64::INFINITY, f64::min);
        assert_eq!((high - low).to_bits(), narrowest.to_bits(), "{trials}");
        assert_eq!(draws.interval(0, 1.0, false), (sorted[0], sorted[trials - 1]));
    }
}
