//! The hot block over random plants of the usual kinds: the heat book closes, answers move the way
//! physics says, nothing that is accepted comes out as an unexplained not-a-number, and every call
//! gives the same bits. Most draws must be answered, or the rest would prove nothing.

#![allow(clippy::neg_cmp_op_on_partial_ord, reason = "a result that does not exist is not-a-number, and is let pass on purpose")]
#![allow(clippy::type_complexity, reason = "tables of cases")]

use flamewright::catalogue::{Prepared, calculation};
use flamewright::node::Node;
use flamewright::record::Field;

const KELVIN: f64 = 273.15;
/// Plants compared with a dense sum, for each kind of burner.
const MANY: usize = 24;

/// Draws between 0 and 1 (a 64-bit linear congruential generator; constants of Knuth's MMIX).
struct Draws(u64);

impl Draws {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn chance(&mut self, share: f64) -> bool {
        self.next() < share
    }

    /// Within two values; by their ratio where they lie decades apart.
    fn within(&mut self, low: f64, high: f64) -> f64 {
        let share = self.next();
        if low > 0.0 && high > 30.0 * low { low * (high / low).powf(share) } else { low + (high - low) * share }
    }

    fn usual(&mut self, field: &Field) -> f64 {
        let (low, high) = (field.minimum.max(field.usual_minimum), field.maximum.min(field.usual_maximum));
        if !field.default.is_nan() && self.chance(0.5) {
            return field.default;
        }
        // From zero on, small values are as good as large ones.
        self.within(if low == 0.0 { 1e-3 * high } else { low }, high)
    }
}

/// One calculation with the names of its values.
struct Asked {
    prepared: Box<dyn Prepared>,
}

/// What came of one draw.
struct Answer {
    output: Vec<f64>,
    codes: Vec<&'static str>,
}

impl Asked {
    fn new(name: &str, settings: &[(&str, Node)]) -> Self {
        let settings = Node::Table(settings.iter().map(|(key, value)| ((*key).to_owned(), value.clone())).collect());
        Self { prepared: calculation(name).unwrap().prepare(&settings).unwrap() }
    }

    fn inputs(&self) -> &'static [Field] {
        self.prepared.entry().inputs()
    }

    fn place(&self, name: &str) -> usize {
        self.inputs().iter().position(|field| field.name == name).unwrap_or_else(|| panic!("no input {name}"))
    }

    fn has(&self, name: &str) -> bool {
        self.inputs().iter().any(|field| field.name == name)
    }

    /// The answer, `None` where the input is refused.
    fn ask(&self, input: &[f64]) -> Option<Answer> {
        let entry = self.prepared.entry();
        let mut output = vec![0.0; entry.outputs().len()];
        let judged = self.prepared.run(input, &mut output);
        if judged.is_refused(entry.rules()) {
            let error = judged.error(entry.inputs(), entry.rules(), input, entry.outputs(), &output);
            assert!(!judged.undefined, "{}: {error} from {input:?}", entry.info().name);
            return None;
        }
        for (field, value) in entry.outputs().iter().zip(&output) {
            let explained = value.is_nan() && !field.absent.is_empty();
            assert!(value.is_finite() || explained, "{}.{} = {value} from {input:?}", entry.info().name, field.name);
        }
        let codes = judged.notices(entry.inputs(), entry.rules(), input).iter().map(|notice| notice.code).collect();
        Some(Answer { output, codes })
    }

    fn get(&self, answer: &Answer, name: &str) -> f64 {
        let outputs = self.prepared.entry().outputs();
        answer.output[outputs.iter().position(|field| field.name == name).unwrap_or_else(|| panic!("no output {name}"))]
    }

    /// A plant of the usual kind, its values fitting one another.
    fn draw(&self, draws: &mut Draws) -> Vec<f64> {
        let mut input: Vec<f64> = self.inputs().iter().map(|field| draws.usual(field)).collect();
        let mut set = |name: &str, value: f64| {
            if self.has(name) {
                input[self.place(name)] = value;
            }
        };
        let room = draws.within(278.0, 303.0);
        let block = room + draws.within(20.0, 70.0);
        set("room_temperature", room);
        set("block_temperature", block);
        set("metal_temperature", if draws.chance(0.3) { block + draws.within(0.0, 80.0) } else { f64::NAN });
        set("film_conductance", if draws.chance(0.5) { draws.within(50.0, 3000.0) } else { f64::NAN });
        set("circuit_temperature", if draws.chance(0.5) { room + draws.within(0.0, 1.0) * (block - room) } else { f64::NAN });
        set("pump_flow", draws.within(0.03, 0.8));
        set("standing_heat", if draws.chance(0.3) { draws.within(5.0, 200.0) } else { 0.0 });
        let drop = draws.within(500.0, 20_000.0);
        set("pressure_drop", if draws.chance(0.5) { drop } else { f64::NAN });
        set("pump_shut_off_pressure", f64::NAN);
        set("emitter_height", f64::NAN);
        let emits = draws.chance(0.6);
        set("emitter_output", if emits { draws.within(200.0, 8000.0) } else { 0.0 });
        set("emitter_heat_capacity", if emits { draws.within(5e3, 2e5) } else { f64::NAN });
        set("insulation_thickness", 0.0);
        set("insulation_conductivity", f64::NAN);
        set("pipe_heat_capacity", draws.within(300.0, 5000.0));
        set("pipe_loss", draws.within(0.1, 2.0));
        let warms = draws.chance(0.3);
        set("room_heat_capacity", if warms { draws.within(1e5, 5e6) } else { f64::NAN });
        set("room_loss", draws.within(5.0, 300.0));
        set("outdoor_temperature", room - draws.within(0.0, 20.0));
        // Burner and thermostats.
        let most = draws.within(4e3, 4e4);
        set("burner_output", most);
        set("low_output", most * draws.within(0.1, 0.6));
        set("turn_down_band", draws.within(1.0, 10.0));
        let cut_out = draws.within(320.0, 363.0);
        set("cut_out_temperature", cut_out);
        set("cut_in_temperature", cut_out - draws.within(3.0, 15.0));
        set("limit_temperature", if draws.chance(0.5) { cut_out + draws.within(0.5, 20.0) } else { f64::NAN });
        set("anti_cycling_delay", if draws.chance(0.3) { draws.within(60.0, 900.0) } else { 0.0 });
        set("overrun_temperature", room + draws.within(0.05, 0.95) * (block - room));
        set("observed_stop_time", f64::NAN);
        let target =
            if self.has("burner_output") { cut_out - draws.within(1.0, 30.0) } else { room + draws.within(0.05, 0.95) * (block - room) };
        set("target_temperature", target);
        set("start_temperature", block);
        input
    }
}

/// Counts what a run of draws came to.
#[derive(Default)]
struct Count {
    drawn: usize,
    accepted: usize,
    answered: usize,
    timed: usize,
}

const UNANSWERED: &[&str] = &["NOT_FOUND", "NOT_FOUND_AFTER", "NOT_REPEATING", "PEAK_NOT_FOUND", "STARTS_WITHOUT_END"];

impl Count {
    fn add(&mut self, answer: Option<&Answer>, time: f64) {
        self.drawn += 1;
        self.accepted += usize::from(answer.is_some());
        self.answered += usize::from(answer.is_some_and(|answer| !answer.codes.iter().any(|code| UNANSWERED.contains(code))));
        self.timed += usize::from(time > 0.0);
    }

    /// Nearly all accepted, nearly all of these answered, and this share with a time.
    fn hold(&self, name: &str, share: f64) {
        self.hold_most(name, 0.95, share);
    }

    fn hold_most(&self, name: &str, most: f64, share: f64) {
        let Count { drawn, accepted, answered, timed } = *self;
        println!("{name}: {drawn} drawn, {accepted} accepted, {answered} answered, {timed} with a time");
        assert!(accepted as f64 >= 0.9 * drawn as f64, "{name}: {accepted} of {drawn} accepted");
        assert!(answered as f64 >= most * accepted as f64, "{name}: {answered} of {accepted} answered");
        assert!(timed as f64 >= share * accepted as f64, "{name}: {timed} of {accepted} with a time");
    }
}

fn word(name: &'static str, value: &str) -> (&'static str, Node) {
    (name, Node::from(value))
}

fn same_bits(asked: &Asked, input: &[f64], answer: &Answer) {
    let again = asked.ask(input).unwrap();
    for (first, second) in answer.output.iter().zip(&again.output) {
        assert_eq!(first.to_bits(), second.to_bits());
    }
}

/// An absent time is explained by one of the notices named.
fn explained(name: &str, time: f64, answer: &Answer, by: &[&str], input: &[f64]) {
    let said = answer.codes.iter().any(|code| by.contains(code));
    assert_eq!(time.is_nan(), said, "{name}: {time} with {:?} from {input:?}", answer.codes);
}

#[test]
fn cool_downs() {
    for (pump, share) in [("running", 0.8), ("stopped", 0.7)] {
        let asked = Asked::new("cool_down", &[word("pump", pump)]);
        let (mut draws, mut count) = (Draws(11), Count::default());
        for _ in 0..150 {
            let input = asked.draw(&mut draws);
            let answer = asked.ask(&input);
            let time = answer.as_ref().map_or(f64::NAN, |answer| asked.get(answer, "time"));
            count.add(answer.as_ref(), time);
            let Some(answer) = answer else { continue };
            explained("cool_down", time, &answer, &["NEVER", "NOT_FOUND"], &input);
            same_bits(&asked, &input, &answer);
            if !(time > 0.0) {
                continue;
            }
            let of = |name: &str| asked.get(&answer, name);
            assert!(of("imbalance").abs() < 1e-6, "{} from {input:?}", of("imbalance"));
            let given = of("casing_heat") + of("pipe_heat") + of("emitter_heat");
            let put_in = input[asked.place("standing_heat")] * time;
            let moved = given.abs().max(put_in).max(of("heat_released").abs());
            assert!((given - put_in - of("heat_released")).abs() < 1e-6 * moved, "{input:?}");
            // A lower target takes longer, or is never reached.
            let mut lower = input.clone();
            lower[asked.place("target_temperature")] -= 1.0;
            if let Some(later) = asked.ask(&lower).map(|answer| asked.get(&answer, "time")) {
                assert!(!(later <= time), "{later} {time} from {input:?}");
            }
            // So does a hotter start of everything, where everything starts alike.
            let mut hotter = input.clone();
            for name in ["block_temperature", "circuit_temperature", "metal_temperature"] {
                hotter[asked.place(name)] += 3.0;
            }
            if let Some(later) = asked.ask(&hotter).map(|answer| asked.get(&answer, "time")) {
                assert!(!(later <= time), "hotter: {later} {time} from {input:?}");
            }
        }
        count.hold(&format!("cool_down, pump {pump}"), share);
    }
}

#[test]
fn gravity_cool_downs() {
    let asked = Asked::new("cool_down", &[word("pump", "stopped")]);
    let (mut draws, mut count) = (Draws(12), Count::default());
    for _ in 0..60 {
        let mut input = asked.draw(&mut draws);
        input[asked.place("pressure_drop")] = draws.within(500.0, 20_000.0);
        input[asked.place("emitter_height")] = draws.within(0.5, 8.0);
        let answer = asked.ask(&input);
        let time = answer.as_ref().map_or(f64::NAN, |answer| asked.get(answer, "time"));
        count.add(answer.as_ref(), time);
        let Some(answer) = answer else { continue };
        explained("cool_down", time, &answer, &["NEVER", "NOT_FOUND"], &input);
        assert!(!(asked.get(&answer, "imbalance").abs() > 1e-6));
        same_bits(&asked, &input, &answer);
    }
    count.hold("cool_down by gravity", 0.7);
}

#[test]
fn overruns() {
    let asked = Asked::new("pump_overrun", &[]);
    let (mut draws, mut count) = (Draws(13), Count::default());
    for _ in 0..150 {
        let input = asked.draw(&mut draws);
        let answer = asked.ask(&input);
        let time = answer.as_ref().map_or(f64::NAN, |answer| asked.get(answer, "stop_time"));
        count.add(answer.as_ref(), time);
        let Some(answer) = answer else { continue };
        explained("pump_overrun", time, &answer, &["NEVER", "NOT_FOUND"], &input);
        same_bits(&asked, &input, &answer);
        if time > 0.0 {
            assert!(asked.get(&answer, "imbalance").abs() < 1e-6);
            let (peak, then) = (asked.get(&answer, "peak_after_stop"), asked.get(&answer, "block_temperature_at_stop"));
            assert!(!(peak < then), "{peak} {then} from {input:?}");
            assert!(!(asked.get(&answer, "final_stop_time") < time));
            let mut lower = input.clone();
            lower[asked.place("overrun_temperature")] -= 1.0;
            if let Some(later) = asked.ask(&lower).map(|answer| asked.get(&answer, "stop_time")) {
                assert!(!(later <= time), "{later} {time} from {input:?}");
            }
        }
    }
    // Under a pilot flame heavy blocks that lose little warm for more than the week that is followed.
    count.hold_most("pump_overrun", 0.9, 0.7);
}

#[test]
fn overshoots() {
    for burner in ["fixed", "two_stage", "modulating"] {
        let asked = Asked::new("overshoot", &[word("burner", burner)]);
        let (mut draws, mut count) = (Draws(14), Count::default());
        for _ in 0..80 {
            let input = asked.draw(&mut draws);
            let answer = asked.ask(&input);
            let time = answer.as_ref().map_or(f64::NAN, |answer| asked.get(answer, "firing_time"));
            count.add(answer.as_ref(), time);
            let Some(answer) = answer else { continue };
            explained("overshoot", time, &answer, &["NEVER_STOPS", "NEVER_LIGHTS", "NOT_FOUND"], &input);
            let lights = input[asked.place("block_temperature")] < input[asked.place("cut_out_temperature")];
            assert_ne!(lights, answer.codes.contains(&"NEVER_LIGHTS"), "{:?} from {input:?}", answer.codes);
            same_bits(&asked, &input, &answer);
            let of = |name: &str| asked.get(&answer, name);
            for peak in ["peak_with_pump_stopped", "peak_with_pump_running"] {
                assert!(!(of(peak) < of("temperature_at_cut_out") - 1e-9), "{peak} from {input:?}");
            }
            // A lower limit has the smaller margin, by as much.
            let limit = input[asked.place("limit_temperature")];
            let margin = limit - of("peak_with_pump_stopped");
            assert!(limit.is_nan() || margin.is_nan() || (margin - of("margin_with_pump_stopped")).abs() < 1e-9);
        }
        count.hold(&format!("overshoot, {burner}"), 0.3);
    }
}

#[test]
fn warm_ups() {
    for burner in ["fixed", "two_stage", "modulating"] {
        let asked = Asked::new("warm_up", &[word("burner", burner)]);
        let (mut draws, mut count) = (Draws(15), Count::default());
        for _ in 0..80 {
            let mut input = asked.draw(&mut draws);
            let room = input[asked.place("room_temperature")];
            for name in ["block_temperature", "circuit_temperature"] {
                input[asked.place(name)] = room;
            }
            input[asked.place("metal_temperature")] = f64::NAN;
            let answer = asked.ask(&input);
            let time = answer.as_ref().map_or(f64::NAN, |answer| asked.get(answer, "time"));
            count.add(answer.as_ref(), time);
            let Some(answer) = answer else { continue };
            explained("warm_up", time, &answer, &["NEVER", "NOT_FOUND"], &input);
            same_bits(&asked, &input, &answer);
            let (highest, target) = (asked.get(&answer, "highest_temperature"), input[asked.place("target_temperature")]);
            assert!(!(highest >= target), "{highest} {target} from {input:?}");
            if time > 0.0 {
                assert!(asked.get(&answer, "imbalance").abs() < 1e-6);
                let mut nearer = input.clone();
                nearer[asked.place("target_temperature")] -= 1.0;
                if let Some(sooner) = asked.ask(&nearer).map(|answer| asked.get(&answer, "time")) {
                    assert!(sooner < time, "{sooner} {time} from {input:?}");
                }
            }
        }
        count.hold(&format!("warm_up, {burner}"), 0.5);
    }
}

#[test]
fn cycles_on_circuits() {
    for burner in ["fixed", "two_stage", "modulating"] {
        let asked = Asked::new("circuit_cycling", &[word("burner", burner)]);
        let (mut draws, mut count) = (Draws(16), Count::default());
        for _ in 0..100 {
            let mut input = asked.draw(&mut draws);
            // A room that warms over days keeps the cycles from repeating.
            input[asked.place("room_heat_capacity")] = f64::NAN;
            let answer = asked.ask(&input);
            let time = answer.as_ref().map_or(f64::NAN, |answer| asked.get(answer, "period"));
            count.add(answer.as_ref(), time);
            let Some(answer) = answer else { continue };
            let reasons = ["NEVER_STOPS", "SETTLES", "STAGES_CYCLE", "NEVER_LIGHTS", "LIMIT_TRIPS", "NOT_REPEATING", "NOT_FOUND"];
            explained("circuit_cycling", time, &answer, &reasons, &input);
            same_bits(&asked, &input, &answer);
            if time > 0.0 {
                let (on, off, duty) = (asked.get(&answer, "on_time"), asked.get(&answer, "off_time"), asked.get(&answer, "duty"));
                assert!(on > 0.0 && off > 0.0 && ((on + off) / time - 1.0).abs() < 1e-12 && duty < 1.0);
                assert!(off >= input[asked.place("anti_cycling_delay")] - 1e-6);
                let (mean, most) = (asked.get(&answer, "mean_output"), input[asked.place("burner_output")]);
                let standing = input[asked.place("standing_heat")];
                assert!(mean <= (duty * most + standing) * (1.0 + 1e-6), "{mean} from {input:?}");
            }
            // Whatever the start, the plant comes to the same cycle, or to rest at the same place: a sum
            // broken off early would keep something of where it began.
            let mut elsewhere = input.clone();
            elsewhere[asked.place("block_temperature")] -= 8.0;
            elsewhere[asked.place("circuit_temperature")] = input[asked.place("room_temperature")];
            let Some(other) = asked.ask(&elsewhere) else { continue };
            // From another start the limit may trip, or not.
            if [&answer, &other].iter().any(|answer| answer.codes.contains(&"LIMIT_TRIPS")) {
                continue;
            }
            for name in ["on_time", "off_time", "mean_output", "steady_temperature", "stage_period"] {
                let (here, there) = (asked.get(&answer, name), asked.get(&other, name));
                assert!(!((here - there).abs() > 2e-6 * here), "{name} {here} {there} from {input:?}");
            }
            if answer.codes.contains(&"SETTLES") {
                let (rest, cut_out) = (asked.get(&answer, "steady_temperature"), input[asked.place("cut_out_temperature")]);
                assert!(rest < cut_out && rest > cut_out - input[asked.place("turn_down_band")], "{rest} from {input:?}");
            }
        }
        // Of the rest, cycles of two or three lengths take turns.
        count.hold_most(&format!("circuit_cycling, {burner}"), 0.98, 0.5);
    }
}

#[test]
fn one_mass() {
    let cooling = Asked::new("block_cool_down", &[]);
    let (mut draws, mut count) = (Draws(17), Count::default());
    for _ in 0..2000 {
        let mut input = cooling.draw(&mut draws);
        input[cooling.place("loss_conductance")] = draws.within(0.5, 60.0);
        let answer = cooling.ask(&input);
        let time = answer.as_ref().map_or(f64::NAN, |answer| cooling.get(answer, "time"));
        count.add(answer.as_ref(), time);
        let Some(answer) = answer else { continue };
        explained("block_cool_down", time, &answer, &["NEVER"], &input);
        // Never, only where the rest lies at or above the target.
        let (rest, target) = (cooling.get(&answer, "steady_temperature"), input[cooling.place("target_temperature")]);
        assert!(!time.is_nan() || rest >= target, "{rest} {target} from {input:?}");
        same_bits(&cooling, &input, &answer);
        let mut lower = input.clone();
        lower[cooling.place("target_temperature")] -= 1.0;
        if let Some(later) = cooling.ask(&lower).map(|answer| cooling.get(&answer, "time")) {
            assert!(!(later <= time) || time == 0.0);
        }
    }
    count.hold("block_cool_down", 0.6);

    let cycling = Asked::new("burner_cycling", &[]);
    let mut count = Count::default();
    for _ in 0..2000 {
        let mut input = cycling.draw(&mut draws);
        input[cycling.place("load_conductance")] = draws.within(1.0, 200.0);
        input[cycling.place("load")] = 0.0;
        input[cycling.place("emitter_output")] = draws.within(100.0, 3000.0);
        let answer = cycling.ask(&input);
        let time = answer.as_ref().map_or(f64::NAN, |answer| cycling.get(answer, "period"));
        count.add(answer.as_ref(), time);
        let Some(answer) = answer else { continue };
        explained("burner_cycling", time, &answer, &["NEVER_STOPS", "NEVER_LIGHTS"], &input);
        // Burning without end only where the load at the cut-out takes what the burner gives; and the
        // other way about: the mass rests above the cut-in only where nothing draws there.
        let over = input[cycling.place("cut_out_temperature")] - input[cycling.place("room_temperature")];
        let load = input[cycling.place("load_conductance")] * over
            + input[cycling.place("emitter_output")] * (over.max(0.0) / 50.0).powf(input[cycling.place("emitter_exponent")]);
        let never = answer.codes.contains(&"NEVER_STOPS");
        assert_eq!(never, load >= input[cycling.place("burner_output")], "{load} from {input:?}");
        assert!(
            !answer.codes.contains(&"NEVER_LIGHTS")
                || input[cycling.place("cut_in_temperature")] <= input[cycling.place("room_temperature")]
        );
        same_bits(&cycling, &input, &answer);
    }
    count.hold("burner_cycling", 0.5);
}

#[test]
fn waits_and_fits() {
    let asked = Asked::new("touch_wait", &[word("policy", "example of a house rule")]);
    let (mut draws, mut count) = (Draws(18), Count::default());
    for _ in 0..2000 {
        let mut input: Vec<f64> = asked.inputs().iter().map(|field| draws.usual(field)).collect();
        input[asked.place("surface_temperature")] = KELVIN + draws.within(20.0, 110.0);
        let answer = asked.ask(&input);
        let time = answer.as_ref().map_or(f64::NAN, |answer| asked.get(answer, "wait"));
        count.add(answer.as_ref(), time);
        let Some(answer) = answer else { continue };
        explained("touch_wait", time, &answer, &["NEVER"], &input);
        assert!(!time.is_nan() || input[asked.place("room_temperature")] >= input[asked.place("contact_temperature")]);
        same_bits(&asked, &input, &answer);
    }
    count.hold("touch_wait", 0.4);

    let mut count = Count::default();
    for _ in 0..300 {
        // Readings of an exponential with scatter.
        let (constant, room, start) = (draws.within(600.0, 20_000.0), draws.within(5.0, 30.0), draws.within(50.0, 90.0));
        let mut list = |value: &dyn Fn(f64) -> f64, scatter: f64, unit: &str| {
            let readings = (0..8).map(|i| format!("{} {unit}", value(f64::from(i) * constant / 8.0) + scatter * (draws.next() - 0.5)));
            Node::List(readings.map(|text| Node::from(text.as_str())).collect())
        };
        let times = list(&|t| t / 60.0, 0.0, "min");
        let temperatures = list(&|t| room + (start - room) * (-t / constant).exp(), 0.4, "degC");
        let fit = Asked::new("cool_down_fit", &[("times", times), ("temperatures", temperatures)]);
        let mut input: Vec<f64> = fit.inputs().iter().map(|field| field.default).collect();
        input[fit.place("heat_capacity")] = 9e4;
        input[fit.place("room_temperature")] = KELVIN + room;
        let answer = fit.ask(&input);
        let found = answer.as_ref().map_or(f64::NAN, |answer| fit.get(answer, "time_constant"));
        count.add(answer.as_ref(), found);
        let Some(answer) = answer else { continue };
        assert!((found / constant - 1.0).abs() < 6.0 * fit.get(&answer, "time_constant_uncertainty") / constant, "{found} {constant}");
        same_bits(&fit, &input, &answer);
    }
    count.hold("cool_down_fit", 0.99);
}

/// Degenerate input is refused, or answered "never" with the reason, in every calculation of a plant.
#[test]
fn degenerate_plants_are_refused_or_answered() {
    let plant = |asked: &Asked| {
        let mut draws = Draws(19);
        let mut input = asked.draw(&mut draws);
        let mut set = |name: &str, value: f64| {
            if asked.has(name) {
                input[asked.place(name)] = value;
            }
        };
        for name in
            ["film_conductance", "metal_temperature", "circuit_temperature", "room_heat_capacity", "limit_temperature", "low_output"]
        {
            set(name, f64::NAN);
        }
        for (name, value) in [("standing_heat", 0.0), ("emitter_output", 800.0), ("emitter_heat_capacity", 2e4), ("emitter_exponent", 1.3)]
        {
            set(name, value);
        }
        for (name, celsius) in [("room_temperature", 20.0), ("block_temperature", 75.0), ("target_temperature", 50.0)] {
            set(name, celsius + KELVIN);
        }
        for (name, celsius) in [("cut_out_temperature", 80.0), ("cut_in_temperature", 70.0), ("overrun_temperature", 60.0)] {
            set(name, celsius + KELVIN);
        }
        input
    };
    const OF_A_PLANT: [&str; 5] = ["cool_down", "pump_overrun", "overshoot", "warm_up", "circuit_cycling"];
    let refusals: &[(&[(&str, f64)], &str)] = &[
        (&[("metal_mass", 0.0), ("water_content", 0.0)], "NO_MASS"),
        (&[("metal_mass", 0.0), ("film_conductance", 500.0)], "NO_MASS"),
        (&[("pump_flow", 0.0)], "NO_FLOW"),
        (&[("emitter_exponent", 0.0)], "out_of_range"),
        (&[("emitter_heat_capacity", f64::NAN)], "EMITTER_WITHOUT_MASS"),
        (&[("emitter_heat_capacity", 0.0)], "out_of_range"),
        (&[("flow_length", 0.0), ("return_length", 0.0), ("emitter_output", 0.0)], "NO_CIRCUIT"),
        (&[("pump_shut_off_pressure", 1e4), ("pressure_drop", f64::NAN)], "NO_DUTY_POINT"),
        (&[("casing_loss", f64::NAN)], "missing"),
        (&[("room_temperature", 1000.0)], "out_of_range"),
    ];
    for name in OF_A_PLANT {
        let asked = Asked::new(name, &[]);
        let sound = plant(&asked);
        assert!(asked.ask(&sound).is_some(), "{name}");
        for (changes, code) in refusals {
            let mut input = sound.clone();
            for (field, value) in *changes {
                input[asked.place(field)] = *value;
            }
            let entry = asked.prepared.entry();
            let mut output = vec![0.0; entry.outputs().len()];
            let judged = asked.prepared.run(&input, &mut output);
            assert!(judged.is_refused(entry.rules()), "{name} {changes:?}");
            let error = judged.error(entry.inputs(), entry.rules(), &input, entry.outputs(), &output);
            assert_eq!(error.code(), *code, "{name} {changes:?}: {error}");
        }
    }
    // (calculation, changes, notice, output that is then absent)
    let answers: &[(&str, &[(&str, f64)], &str, &str)] = &[
        ("cool_down", &[("target_temperature", KELVIN + 15.0)], "NEVER", "time"),
        ("cool_down", &[("target_temperature", KELVIN + 20.0)], "NEVER", "time"),
        (
            "cool_down",
            &[("casing_loss", 0.0), ("pipe_loss", 0.0), ("emitter_output", 0.0), ("emitter_heat_capacity", f64::NAN)],
            "NEVER",
            "time",
        ),
        ("pump_overrun", &[("overrun_temperature", KELVIN + 15.0)], "NEVER", "stop_time"),
        ("overshoot", &[("burner_output", 10.0)], "NEVER_STOPS", "firing_time"),
        ("warm_up", &[("target_temperature", KELVIN + 140.0)], "NEVER", "time"),
        ("warm_up", &[("burner_output", 10.0), ("target_temperature", KELVIN + 78.0)], "NEVER", "time"),
        ("circuit_cycling", &[("burner_output", 10.0)], "NEVER_STOPS", "period"),
        ("circuit_cycling", &[("cut_in_temperature", KELVIN + 15.0)], "NEVER_LIGHTS", "period"),
    ];
    for (name, changes, code, absent) in answers {
        let asked = Asked::new(name, &[]);
        let mut input = plant(&asked);
        for (field, value) in *changes {
            input[asked.place(field)] = *value;
        }
        let answer = asked.ask(&input).unwrap_or_else(|| panic!("{name} {changes:?} refused"));
        assert!(answer.codes.contains(code), "{name} {changes:?}: {:?}", answer.codes);
        assert!(asked.get(&answer, absent).is_nan(), "{name} {changes:?}");
    }
}

/// A plant's heat balances written out a second time and stepped by the classical method of Runge
/// and Kutta, each step checked against two of half its length: nothing of the library's network,
/// solver or events is in it.
#[derive(Clone)]
struct Stepped {
    /// Heat capacity, and conductance of the film.
    metal: Option<(f64, f64)>,
    water: f64,
    casing: f64,
    standing: f64,
    cells: Vec<Cell>,
    flow_cells: usize,
    return_cells: usize,
    /// Heat capacity, loss and outside.
    room: Option<(f64, f64, f64)>,
    fixed_room: f64,
    /// Mass flow times specific heat capacity while the pump runs.
    conveyance: f64,
    /// Height, and the same for each root of a pascal.
    gravity: Option<(f64, f64)>,
    lag: f64,
    time: f64,
    step: f64,
    /// Water, metal, cells, room, sensor.
    state: Vec<f64>,
}

#[derive(Clone)]
struct Cell {
    capacity: f64,
    linear: f64,
    power_at_50: f64,
    exponent: f64,
}

impl Stepped {
    fn new(asked: &Asked, input: &[f64]) -> Self {
        let get = |name: &str| input[asked.place(name)];
        let or = |value: f64, other: f64| if value.is_nan() { other } else { value };
        let metal = get("metal_mass") * get("metal_specific_heat_capacity");
        let water = get("water_content") * get("water_density") * get("water_specific_heat_capacity");
        let film = get("film_conductance");
        let pipe = |length: f64| {
            let (capacity, linear) = (length * get("pipe_heat_capacity") / 10.0, length * get("pipe_loss") / 10.0);
            vec![Cell { capacity, linear, power_at_50: 0.0, exponent: 1.0 }; 10]
        };
        let mut cells = pipe(get("flow_length"));
        if get("emitter_output") > 0.0 {
            let (power_at_50, exponent) = (get("emitter_output"), get("emitter_exponent"));
            cells.push(Cell { capacity: get("emitter_heat_capacity"), linear: 0.0, power_at_50, exponent });
        }
        cells.extend(pipe(get("return_length")));
        let block = get("block_temperature");
        let mut state = vec![block];
        if !film.is_nan() {
            state.push(or(get("metal_temperature"), block));
        }
        state.resize(state.len() + cells.len(), or(get("circuit_temperature"), block));
        state.extend([get("room_temperature"), block]);
        let specific = get("water_specific_heat_capacity");
        let height = get("emitter_height");
        Self {
            metal: (!film.is_nan()).then_some((metal, film)),
            water: if film.is_nan() { metal + water } else { water },
            casing: get("casing_loss"),
            standing: get("standing_heat"),
            cells,
            flow_cells: 10,
            return_cells: 10,
            room: (!get("room_heat_capacity").is_nan()).then(|| (get("room_heat_capacity"), get("room_loss"), get("outdoor_temperature"))),
            fixed_room: get("room_temperature"),
            conveyance: get("pump_flow") * specific,
            gravity: (!height.is_nan()).then(|| (height, get("pump_flow") * specific / get("pressure_drop").sqrt())),
            lag: get("sensor_time_constant"),
            time: 0.0,
            step: 1e-3,
            state,
        }
    }

    fn sensor(&self) -> f64 {
        *if self.lag > 0.0 { self.state.last() } else { self.state.first() }.unwrap()
    }

    fn rates(&self, state: &[f64], pump: bool, fire: &dyn Fn(f64) -> f64) -> Vec<f64> {
        let mut rates = vec![0.0; state.len()];
        let (place_of_room, place_of_sensor) = (state.len() - 2, state.len() - 1);
        let room = if self.room.is_some() { state[place_of_room] } else { self.fixed_room };
        let (water, first) = (state[0], if self.metal.is_some() { 2 } else { 1 });
        let cells = &state[first..place_of_room];
        let conveyance = match self.gravity {
            _ if pump => self.conveyance,
            None => 0.0,
            Some((height, coefficient)) => {
                // Each leg by the trapezoidal rule, from the water that enters it.
                let leg = |ends: Vec<f64>| ends.windows(2).map(|pair| 0.5 * (pair[0] + pair[1])).sum::<f64>() / (ends.len() - 1) as f64;
                let up = leg([&[water], &cells[..self.flow_cells]].concat());
                let down = leg(cells[cells.len() - self.return_cells - 1..].to_vec());
                let density = |temperature: f64| flamewright::water::liquid(2e5, temperature.max(273.15)).density;
                let pressure = 9.80665 * height * (density(down) - density(up));
                if pressure <= 0.0 { 0.0 } else { coefficient * pressure / (pressure + 2.0).sqrt() }
            }
        };
        let mut given_off = 0.0;
        let mut above = water;
        for (i, (cell, own)) in self.cells.iter().zip(cells).enumerate() {
            let over = own - room;
            let loss = cell.linear * over + cell.power_at_50 * over.signum() * (over.abs() / 50.0).powf(cell.exponent);
            rates[first + i] = (conveyance * (above - own) - loss) / cell.capacity;
            given_off += loss;
            above = *own;
        }
        let fire = fire(if self.lag > 0.0 { state[place_of_sensor] } else { water }) + self.standing;
        let back = conveyance * (above - water);
        let casing = self.casing * (if self.metal.is_some() { state[1] } else { water } - room);
        match self.metal {
            Some((metal, film)) => {
                rates[0] = (back + film * (state[1] - water)) / self.water;
                rates[1] = (fire - film * (state[1] - water) - casing) / metal;
            }
            None => rates[0] = (back + fire - casing) / self.water,
        }
        given_off += casing;
        rates[place_of_room] = self.room.map_or(0.0, |(capacity, loss, outside)| (given_off - loss * (room - outside)) / capacity);
        rates[place_of_sensor] = if self.lag > 0.0 { (water - state[place_of_sensor]) / self.lag } else { 0.0 };
        rates
    }

    fn stepped(&self, from: &[f64], h: f64, pump: bool, fire: &dyn Fn(f64) -> f64) -> Vec<f64> {
        let plus = |share: f64, rates: &[f64]| -> Vec<f64> { from.iter().zip(rates).map(|(y, k)| y + share * h * k).collect() };
        let k1 = self.rates(from, pump, fire);
        let k2 = self.rates(&plus(0.5, &k1), pump, fire);
        let k3 = self.rates(&plus(0.5, &k2), pump, fire);
        let k4 = self.rates(&plus(1.0, &k3), pump, fire);
        (0..from.len()).map(|i| from[i] + h / 6.0 * (k1[i] + 2.0 * (k2[i] + k3[i]) + k4[i])).collect()
    }

    /// One step that is right to a tenth of a microkelvin, no longer than `most`.
    fn advance(&mut self, most: f64, pump: bool, fire: &dyn Fn(f64) -> f64) {
        loop {
            let h = self.step.min(most);
            let whole = self.stepped(&self.state, h, pump, fire);
            let halves = self.stepped(&self.stepped(&self.state, 0.5 * h, pump, fire), 0.5 * h, pump, fire);
            let apart = whole.iter().zip(&halves).fold(0.0, |most, (a, b)| f64::max(most, (a - b).abs()));
            let right = apart / 15.0 < 1e-7;
            self.step = h * if apart > 0.0 { (0.9 * (1.5e-6 / apart).powf(0.2)).clamp(0.2, 3.0) } else { 3.0 };
            if right {
                (self.state, self.time) = (halves, self.time + h);
                return;
            }
        }
    }

    /// Up to where the sensor passes a level; false where that is not within a day.
    fn advance_to(&mut self, level: f64, rising: bool, pump: bool, fire: &dyn Fn(f64) -> f64) -> bool {
        let there = |plant: &Self| if rising { plant.sensor() >= level } else { plant.sensor() <= level };
        while !there(self) {
            if self.time > 86_400.0 {
                return false;
            }
            let before = self.clone();
            self.advance(f64::INFINITY, pump, fire);
            if there(self) {
                // Half of the step again and again, as long as that does not pass it.
                let mut part = self.time - before.time;
                *self = before;
                while part > 1e-10 {
                    part *= 0.5;
                    let state = self.stepped(&self.state, part, pump, fire);
                    let before = core::mem::replace(&mut self.state, state);
                    if there(self) { self.state = before } else { self.time += part }
                }
                return true;
            }
        }
        true
    }

    /// Highest temperature of the water from here on with the burner off, and whether it is sure that
    /// none higher follows the end of the sum: without heat put in nothing rises above the hottest.
    fn highest(mut self, pump: bool) -> (f64, bool) {
        let off = |_: f64| 0.0;
        let mut most = self.state[0];
        let outside = self.room.map_or(self.fixed_room, |(_, _, outside)| outside);
        let end = self.time + 40_000.0;
        let mut slope = self.rates(&self.state, pump, &off)[0];
        while self.time < end {
            let (from, began) = (self.state[0], self.time);
            // Steps short enough for the cubic below.
            self.advance(0.05 * (1.0 + self.time - (end - 40_000.0)), pump, &off);
            let rates = self.rates(&self.state, pump, &off);
            let (h, to) = (self.time - began, self.state[0]);
            // A maximum inside the step, by the cubic through both ends.
            if slope > 0.0 && rates[0] < 0.0 {
                let cubic = |x: f64| {
                    let (rise, left, right) = (to - from, h * slope, h * rates[0]);
                    from + x * (rise + (1.0 - x) * ((1.0 - x) * (left - rise) - x * (right - rise)))
                };
                most = (1..100).map(|i| cubic(f64::from(i) / 100.0)).fold(most, f64::max);
            }
            most = most.max(to);
            slope = rates[0];
            let hottest = self.state[..self.state.len() - 1].iter().copied().fold(outside, f64::max);
            let rests = rates.iter().all(|rate| rate.abs() < 1e-10);
            if (self.standing == 0.0 && hottest < most) || rests {
                return (most, true);
            }
        }
        (most, false)
    }
}

/// What peaks of random plants came to beside a dense sum of the same plant.
#[derive(Default)]
struct Peaks {
    compared: usize,
    rising: usize,
    absent: usize,
    worst: f64,
}

impl Peaks {
    fn compare(&mut self, got: f64, plant: &Stepped, pump: bool, answer: &Answer, input: &[f64]) {
        let (most, sure) = plant.clone().highest(pump);
        if got.is_nan() {
            assert!(answer.codes.contains(&"PEAK_NOT_FOUND"), "{:?} from {input:?}", answer.codes);
            self.absent += 1;
            return;
        }
        let apart = if sure { (got - most).abs() } else { most - got };
        assert!(apart < 1e-5, "pump {pump}: {got} and {most} from {input:?}");
        self.compared += usize::from(sure);
        self.rising += usize::from(most > plant.state[0] + 0.01);
        self.worst = self.worst.max(apart);
    }

    fn hold(&self, name: &str, least: usize) {
        println!("{name}: {} compared, {} of them rise, {} absent, worst {:e} K", self.compared, self.rising, self.absent, self.worst);
        assert!(self.compared >= least && self.rising * 4 >= self.compared && self.absent * 4 <= self.compared);
    }
}

impl Asked {
    /// A plant with much to rise: hot metal, cool circuits, little flow, at times gravity.
    fn draw_with_residual_heat(&self, draws: &mut Draws) -> Vec<f64> {
        let mut input = self.draw(draws);
        let mut set = |name: &str, value: f64| input[self.place(name)] = value;
        set("flow_length", draws.within(4.0, 40.0));
        set("return_length", draws.within(4.0, 40.0));
        set("pump_flow", draws.within(0.01, 0.3));
        set("pressure_drop", draws.within(500.0, 20_000.0));
        set("emitter_height", if draws.chance(0.4) { draws.within(0.5, 8.0) } else { f64::NAN });
        set("circuit_temperature", if draws.chance(0.7) { draws.within(283.0, 320.0) } else { f64::NAN });
        set("film_conductance", if draws.chance(0.8) { draws.within(50.0, 2000.0) } else { f64::NAN });
        if draws.chance(0.3) {
            set("block_temperature", draws.within(300.0, 340.0));
            set("metal_temperature", draws.within(330.0, 500.0));
        }
        input
    }
}

#[test]
fn peaks_after_the_burner_beside_a_dense_sum() {
    for burner in ["fixed", "two_stage", "modulating"] {
        let asked = Asked::new("overshoot", &[word("burner", burner)]);
        let (mut draws, mut peaks) = (Draws(20), Peaks::default());
        for _ in 0..MANY {
            let input = asked.draw_with_residual_heat(&mut draws);
            let Some(answer) = asked.ask(&input) else { continue };
            let time = asked.get(&answer, "firing_time");
            if time.is_nan() {
                continue;
            }
            let get = |name: &str| input[asked.place(name)];
            let (most, least, band, cut_out) = (get("burner_output"), get("low_output"), get("turn_down_band"), get("cut_out_temperature"));
            let mut plant = Stepped::new(&asked, &input);
            let stops = match burner {
                "fixed" => plant.advance_to(cut_out, true, true, &|_| most),
                "two_stage" => plant.advance_to(cut_out - band, true, true, &|_| most) && plant.advance_to(cut_out, true, true, &|_| least),
                _ => plant.advance_to(cut_out, true, true, &|shown| least + (most - least) * ((cut_out - shown) / band).clamp(0.0, 1.0)),
            };
            assert!(stops && (plant.time / time - 1.0).abs() < 2e-5, "{} {time} from {input:?}", plant.time);
            plant.step = 1e-3;
            peaks.compare(asked.get(&answer, "peak_with_pump_stopped"), &plant, false, &answer, &input);
            peaks.compare(asked.get(&answer, "peak_with_pump_running"), &plant, true, &answer, &input);
        }
        peaks.hold(&format!("overshoot, {burner}"), MANY / 2);
    }
}

#[test]
fn peaks_after_an_overrun_beside_a_dense_sum() {
    let asked = Asked::new("pump_overrun", &[]);
    let (mut draws, mut peaks) = (Draws(21), Peaks::default());
    for _ in 0..2 * MANY {
        let mut input = asked.draw_with_residual_heat(&mut draws);
        input[asked.place("overrun_temperature")] = input[asked.place("block_temperature")] + draws.within(-15.0, 3.0);
        let Some(answer) = asked.ask(&input) else { continue };
        let time = asked.get(&answer, "stop_time");
        let mut plant = Stepped::new(&asked, &input);
        if time.is_nan() || !plant.advance_to(input[asked.place("overrun_temperature")], false, true, &|_| 0.0) {
            continue;
        }
        assert!((plant.time - time).abs() <= 2e-5 * time, "{} {time} from {input:?}", plant.time);
        plant.step = 1e-3;
        peaks.compare(asked.get(&answer, "peak_after_stop"), &plant, false, &answer, &input);
    }
    peaks.hold("pump_overrun", MANY);
}
