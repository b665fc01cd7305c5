//! The calculation `touch_wait`: when a surface is cool enough to be touched, by the caller's policy.

use super::cool_down::{NamedThreshold, THRESHOLDS, column, thresholds_from};
use super::plant::HOT_BLOCK_CAUTIONS;
use crate::calculation::{Calculation, Context, Form, Info, Raised, Setting, Settings, Source, Table};
use crate::math::ln;
use crate::quantity::types::{Ratio, TemperatureInterval, ThermodynamicTemperature, Time};
use crate::quantity::units::{KELVIN, MINUTE};
use crate::quantity::{Value, units};
use crate::record::record;
use crate::working::{Working, step};
use crate::{Error, rules};
use alloc::borrow::ToOwned;
use alloc::string::String;
use alloc::vec::Vec;

/// A hot surface that cools.
#[record]
pub struct TouchWaitState {
    /// Temperature of the surface now.
    #[field("t_S", DEGREE_CELSIUS, -30.0..=400.0, usual = 20.0..=110.0)]
    pub surface_temperature: ThermodynamicTemperature,
    /// Room temperature.
    #[field("t_A", DEGREE_CELSIUS, -30.0..=60.0, default = 20.0, usual = 0.0..=35.0)]
    pub room_temperature: ThermodynamicTemperature,
    /// Time constant of the cool-down, from `block_cool_down`, `cool_down_fit` or `pipe_cool_down`.
    #[field("\\tau_0", MINUTE, 0.01..=1e5, usual = 1.0..=1000.0)]
    pub time_constant: Time,
    /// Contact temperature not to be exceeded, by the policy named.
    #[field("t_Z", DEGREE_CELSIUS, 20.0..=100.0, usual = 40.0..=70.0)]
    pub contact_temperature: ThermodynamicTemperature,
}

/// How long to wait.
#[record]
pub struct TouchWaitResult {
    /// Time until the surface has fallen to the contact temperature; zero where it has.
    #[field("\\tau", MINUTE, absent = "never")]
    pub wait: Time,
    /// Surface less contact temperature now; negative where it may be touched.
    #[field("\\Delta t", KELVIN)]
    pub excess: TemperatureInterval,
}

/// When a surface may be touched, by a policy the caller states.
#[derive(Clone, Debug, PartialEq)]
pub struct TouchWait {
    /// The policy the contact temperatures come from, with its date.
    pub policy: String,
    /// Further contact temperatures of the policy, each with its surface and contact time as name.
    pub thresholds: Vec<NamedThreshold>,
}

impl Context for TouchWait {
    const SETTINGS: &'static [Setting] = &[
        Setting {
            name: "policy",
            doc: "Where the contact temperatures come from: a standard with edition, or a house rule, with its date. None is built in; that a hand can rest on metal below about 50 °C is common practice without a source.",
            form: Form::Text,
            default: None,
        },
        THRESHOLDS,
    ];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        settings.need("policy")?;
        let policy = settings.text("policy")?.trim();
        if policy.is_empty() {
            return Err(Error::bad_setting("policy", "", "name the policy the contact temperatures come from"));
        }
        Ok(Self { policy: policy.to_owned(), thresholds: thresholds_from(settings)? })
    }
}

rules! {
    notice MAY_BE_TOUCHED on "wait": "the surface is at or below the contact temperature of the policy now";
    notice NEVER on "wait": "the room is at or above the contact temperature: the surface never falls to it";
}

/// Time until an excess over the room has decayed from one to another, s; NaN where it never does.
fn wait(surface: f64, room: f64, time_constant: f64, contact: f64) -> f64 {
    if surface <= contact {
        return 0.0;
    }
    let time = time_constant * ln((surface - room) / (contact - room));
    if time.is_finite() { time } else { f64::NAN }
}

impl Calculation for TouchWait {
    type Input = TouchWaitState;
    type Output = TouchWaitResult;
    const INFO: Info = Info {
        name: "touch_wait",
        title: "Wait until a surface may be touched",
        summary: "How long until a cooling surface has fallen to a contact temperature that the caller's policy states for its material and contact time.",
        sources: &[Source::new("Newton's law of cooling", "exponential with the time constant given")],
        accuracy: "As the time constant; a bare surface cools more slowly towards the end than the exponential says, so that the wait may be a quarter longer.",
        cautions: HOT_BLOCK_CAUTIONS,
        checked_against: "closed form, no outside check exists; the table of burn thresholds in tests/reference/heat serves as an example of a policy only: its rows are unverified",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    fn review(&self, _input: &TouchWaitState, output: &TouchWaitResult) -> Raised {
        Raised::NONE.when(MAY_BE_TOUCHED, output.wait.si() == 0.0).when(NEVER, output.wait.si().is_nan())
    }

    fn compute<W: Working>(&self, input: &TouchWaitState, working: &mut W) -> TouchWaitResult {
        let (surface, room, contact) = (input.surface_temperature.si(), input.room_temperature.si(), input.contact_temperature.si());
        let time_constant = input.time_constant;
        step!(working, let excess: "\\Delta t" in KELVIN = TemperatureInterval::from_si(surface - contact), "surface less contact temperature");
        let constants = Ratio::from_si(wait(surface, room, 1.0, contact));
        step!(working, let wait: "\\tau" in MINUTE = time_constant * constants, "Newton's law of cooling");
        TouchWaitResult { wait, excess }
    }

    /// The wait for each contact temperature of the policy.
    fn tables(&self, input: &TouchWaitState) -> Vec<Table> {
        if self.thresholds.is_empty() {
            return Vec::new();
        }
        let levels: Vec<f64> = self.thresholds.iter().map(|threshold| threshold.temperature.si()).collect();
        let (surface, room, constant) = (input.surface_temperature.si(), input.room_temperature.si(), input.time_constant.si());
        let waits = levels.iter().map(|level| wait(surface, room, constant, *level)).collect();
        alloc::vec![Table {
            name: "wait by contact temperature",
            row_names: self.thresholds.iter().map(|threshold| threshold.name.clone()).collect(),
            columns: alloc::vec![column("contact temperature", &units::DEGREE_CELSIUS, levels), column("wait", &units::MINUTE, waits)],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::node::Node;
    use crate::record::Record;
    use flamewright_reference::rows;

    fn pipe() -> TouchWaitState {
        TouchWaitState::read([("surface_temperature", "75 degC"), ("time_constant", "24 min"), ("contact_temperature", "51 degC")]).unwrap()
    }

    #[test]
    fn waits_by_the_thresholds_of_a_policy() {
        // The rows stand for a policy of the caller; those with a plain number are taken.
        let thresholds: Vec<NamedThreshold> = rows("heat/burn_thresholds.csv")
            .iter()
            .filter_map(|row| {
                let celsius: f64 = row.text("burn_threshold_C").parse().ok()?;
                let name = std::format!("{}, {}", row.text("surface"), row.text("contact"));
                Some(NamedThreshold { name, temperature: ThermodynamicTemperature::from_si(celsius + 273.15) })
            })
            .collect();
        assert!(thresholds.len() > 12);
        let calculation = TouchWait { policy: "example rows, unverified".to_owned(), thresholds };
        let got = calculation.evaluate(&pipe()).unwrap();
        assert!((got.wait.si() - 24.0 * 60.0 * libm::log(55.0 / 31.0)).abs() < 1e-9);
        let table = &calculation.tables(&pipe())[0];
        for (level, wait) in table.columns[0].values.iter().zip(&table.columns[1].values) {
            let left = 293.15 + 55.0 * libm::exp(-wait / (24.0 * 60.0));
            assert!((left - level).abs() < 1e-9, "{level} {wait}");
        }
    }

    #[test]
    fn cool_surfaces_warm_rooms_and_missing_policies() {
        let calculation = TouchWait { policy: "house rule".to_owned(), thresholds: Vec::new() };
        let cool =
            calculation.evaluate(&TouchWaitState { surface_temperature: ThermodynamicTemperature::from_si(315.15), ..pipe() }).unwrap();
        assert_eq!((cool.wait.si(), cool.notices()[0].code), (0.0, "MAY_BE_TOUCHED"));
        let warm = TouchWaitState { room_temperature: ThermodynamicTemperature::from_si(325.15), ..pipe() };
        let warm = calculation.evaluate(&warm).unwrap();
        assert!(warm.wait.si().is_nan() && warm.notices().iter().any(|notice| notice.code == "NEVER"));
        let given = Node::from([("surface_temperature", "75 degC"), ("time_constant", "24 min"), ("contact_temperature", "51 degC")]);
        let error = evaluate("touch_wait", &given, Bare::Refused).err().unwrap();
        assert_eq!(error.field(), "policy");
    }
}
