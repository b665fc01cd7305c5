//! Heat emitters (radiators, convectors): output at another condition than rated, and at a flow.

use crate::calculation::{Calculation, Context, Form, Info, Raised, Rule, Setting, Settings, Source};
use crate::math::{self, ln_1p, pow};
use crate::quantity::Value;
use crate::quantity::types::{AvailableEnergy, MassRate, Power, Ratio, TemperatureInterval, ThermodynamicTemperature};
use crate::quantity::units::WATT;
use crate::record::record;
use crate::water::heating_water;
use crate::working::{Working, step};
use crate::{Error, rules};

/// How the temperature of the water in an emitter is averaged over that of the room.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum MeanExcess {
    /// Half the sum of flow and return excess: the definition of EN 442.
    #[default]
    Arithmetic,
    /// Logarithmic mean: nearer the truth where the return is much cooler than the flow.
    Logarithmic,
}

impl MeanExcess {
    /// Mean excess in K from the excess of flow and return over the room, in K; NaN if either is
    /// not positive.
    pub fn of(self, flow_excess: f64, return_excess: f64) -> f64 {
        let valid = flow_excess > 0.0 && return_excess > 0.0;
        if !valid {
            return f64::NAN;
        }
        let arithmetic = 0.5 * (flow_excess + return_excess);
        match self {
            Self::Arithmetic => arithmetic,
            Self::Logarithmic => {
                let x = (flow_excess - return_excess) / return_excess;
                // Where the two are all but equal the quotient loses its digits; the series does not.
                if x.abs() < 1.0e-4 { return_excess * (1.0 + x / 2.0 - x * x / 12.0) } else { (flow_excess - return_excess) / ln_1p(x) }
            }
        }
    }
}

const MEAN_SETTING: Setting = Setting {
    name: "mean_excess",
    doc: "How water temperature is averaged: arithmetic as EN 442 rates emitters, or logarithmic, nearer the truth at large drops. Rated and actual condition alike.",
    form: Form::Choice(&["arithmetic", "logarithmic"]),
    default: Some("arithmetic"),
};

fn mean_from_settings(settings: &Settings<'_>) -> Result<MeanExcess, Error> {
    settings.choice(MEAN_SETTING.name, &[("arithmetic", MeanExcess::Arithmetic), ("logarithmic", MeanExcess::Logarithmic)])
}

/// Excess of the water over the room, K.
fn mean_excess_of(
    mean: MeanExcess,
    flow: ThermodynamicTemperature,
    back: ThermodynamicTemperature,
    room: ThermodynamicTemperature,
) -> TemperatureInterval {
    TemperatureInterval::from_si(mean.of(flow.si() - room.si(), back.si() - room.si()))
}

const SOURCES: &[Source] = &[
    Source::new(
        "EN 442-2, characteristic equation",
        "output proportional to a power of the mean excess temperature; rating at 75/65/20 °C",
    ),
    Source::new("textbook, heat exchanger theory", "logarithmic mean"),
    Source::new(
        "common practice, no source",
        "exponent 1.3 where none is stated; logarithmic mean where the return excess is below 0.7 of the flow's",
    ),
];
const ACCURACY: &str = "3 % near the rated condition for an emitter that is mounted and connected as tested; 10 % at a third of the rated excess or with small flows.";

/// A rated emitter and the condition it works at.
#[record]
pub struct EmitterOutputInput {
    /// Output at the rated condition.
    #[field("\\Phi_n", WATT, 1.0..=1000000.0, usual = 100.0..=10000.0)]
    pub rated_output: Power,
    /// Exponent of the characteristic equation, from the maker.
    #[field("n", ONE, 1.0..=1.6, default = 1.3, usual = 1.1..=1.45)]
    pub exponent: Ratio,
    /// Flow temperature now.
    #[field("t_F", DEGREE_CELSIUS, 0.0..=110.0, usual = 25.0..=90.0)]
    pub flow_temperature: ThermodynamicTemperature,
    /// Return temperature now.
    #[field("t_R", DEGREE_CELSIUS, 0.0..=110.0, usual = 20.0..=80.0)]
    pub return_temperature: ThermodynamicTemperature,
    /// Room temperature now.
    #[field("t_i", DEGREE_CELSIUS, -10.0..=50.0, default = 20.0, usual = 5.0..=26.0)]
    pub room_temperature: ThermodynamicTemperature,
    /// Flow temperature at the rated condition.
    #[field("t_{F,n}", DEGREE_CELSIUS, 0.0..=130.0, default = 75.0)]
    pub rated_flow_temperature: ThermodynamicTemperature,
    /// Return temperature at the rated condition.
    #[field("t_{R,n}", DEGREE_CELSIUS, 0.0..=130.0, default = 65.0)]
    pub rated_return_temperature: ThermodynamicTemperature,
    /// Room temperature at the rated condition.
    #[field("t_{i,n}", DEGREE_CELSIUS, 0.0..=30.0, default = 20.0)]
    pub rated_room_temperature: ThermodynamicTemperature,
    /// Output wanted now, where an emitter is to be chosen.
    #[field("\\Phi_w", WATT, 1.0..=1000000.0, absent = "not asked")]
    pub wanted_output: Power,
}

/// What the emitter gives.
#[record]
pub struct EmitterOutputResult {
    /// Mean excess temperature now.
    #[field("\\Delta t_m", KELVIN)]
    pub mean_excess: TemperatureInterval,
    /// Mean excess temperature at the rated condition.
    #[field("\\Delta t_n", KELVIN)]
    pub rated_mean_excess: TemperatureInterval,
    /// Share of the rated output; its reverse is how much larger an emitter must be rated.
    #[field("f", ONE)]
    pub output_factor: Ratio,
    /// Output now.
    #[field("\\Phi", WATT)]
    pub heat_output: Power,
    /// Output at the rated condition that an emitter needs to give the wanted one now.
    #[field("\\Phi_{n,w}", WATT, absent = "no wanted output given")]
    pub needed_rated_output: Power,
}

/// Emitter output at another condition than rated.
#[derive(Clone, Copy, Debug, Default)]
pub struct EmitterOutput {
    /// How the water temperature is averaged.
    pub mean: MeanExcess,
}

impl Context for EmitterOutput {
    const SETTINGS: &'static [Setting] = &[MEAN_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { mean: mean_from_settings(settings)? })
    }
}

mod output_rules {
    crate::rules! {
        refuse RETURN_HOTTER on "return_temperature": "the return cannot be hotter than the flow; swap the two readings?";
        refuse ROOM_TOO_WARM on "room_temperature": "the room must be colder than the return, or the emitter gives no heat";
        refuse RATING_IMPOSSIBLE on "rated_return_temperature": "at the rated condition flow, return and room must fall in that order";
        notice USE_LOGARITHMIC on "return_temperature": "the return is so much cooler than the flow that the arithmetic mean promises too much; choose the logarithmic one";
    }
    pub(super) const LIST: &[crate::calculation::Rule] = RULES;
    pub(super) const NUMBERS: [u32; 4] = [RETURN_HOTTER, ROOM_TOO_WARM, RATING_IMPOSSIBLE, USE_LOGARITHMIC];
}

impl Calculation for EmitterOutput {
    type Input = EmitterOutputInput;
    type Output = EmitterOutputResult;
    const INFO: Info = Info {
        name: "emitter_output",
        title: "Emitter output at another condition",
        summary: "What a radiator rated at one flow, return and room temperature gives at another, and the rating that a wanted output needs there.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: &[],
        checked_against: "heat/radiator_factor.csv, heat/published_hydraulic_examples.csv (H04)",
    };
    const RULES: &'static [Rule] = output_rules::LIST;

    #[inline(always)]
    fn check(&self, input: &EmitterOutputInput) -> Raised {
        let [return_hotter, room_too_warm, rating_impossible, use_logarithmic] = output_rules::NUMBERS;
        let (flow, back, room) = (input.flow_temperature.si(), input.return_temperature.si(), input.room_temperature.si());
        let (rated_flow, rated_back) = (input.rated_flow_temperature.si(), input.rated_return_temperature.si());
        Raised::NONE
            .when(return_hotter, back > flow)
            .when(room_too_warm, room >= back)
            .when(rating_impossible, (rated_back > rated_flow) | (input.rated_room_temperature.si() >= rated_back))
            .when(use_logarithmic, matches!(self.mean, MeanExcess::Arithmetic) & (back - room < 0.7 * (flow - room)))
    }

    fn compute<W: Working>(&self, input: &EmitterOutputInput, working: &mut W) -> EmitterOutputResult {
        let mean = self.mean;
        step!(working, let mean_excess: "\\Delta t_m" = mean_excess_of(mean, input.flow_temperature, input.return_temperature, input.room_temperature), "EN 442-2, or logarithmic mean");
        step!(working, let rated_mean_excess: "\\Delta t_n" = mean_excess_of(mean, input.rated_flow_temperature, input.rated_return_temperature, input.rated_room_temperature), "EN 442-2, or logarithmic mean");
        step!(working, let output_factor: "f" = Ratio::from_si(math::pow(mean_excess.si() / rated_mean_excess.si(), input.exponent.si())), "EN 442-2");
        step!(working, let heat_output: "\\Phi" in WATT = input.rated_output * output_factor, "EN 442-2");
        let needed_rated_output = if input.wanted_output.si().is_nan() {
            input.wanted_output
        } else {
            step!(working, let needed_rated_output: "\\Phi_{n,w}" in WATT = input.wanted_output / output_factor, "EN 442-2");
            needed_rated_output
        };
        EmitterOutputResult { mean_excess, rated_mean_excess, output_factor, heat_output, needed_rated_output }
    }
}

/// A rated emitter and the water sent to it.
#[record]
pub struct EmitterAtFlowInput {
    /// Output at the rated condition.
    #[field("\\Phi_n", WATT, 1.0..=1000000.0, usual = 100.0..=10000.0)]
    pub rated_output: Power,
    /// Exponent of the characteristic equation, from the maker.
    #[field("n", ONE, 1.0..=1.6, default = 1.3, usual = 1.1..=1.45)]
    pub exponent: Ratio,
    /// Mass flow of water through it.
    #[field("\\dot m", KILOGRAM_PER_HOUR, 0.1..=100000.0, usual = 2.0..=1000.0)]
    pub mass_flow: MassRate,
    /// Flow temperature.
    #[field("t_F", DEGREE_CELSIUS, 0.0..=110.0, usual = 25.0..=90.0)]
    pub flow_temperature: ThermodynamicTemperature,
    /// Room temperature.
    #[field("t_i", DEGREE_CELSIUS, 0.0..=50.0, default = 20.0, usual = 5.0..=26.0)]
    pub room_temperature: ThermodynamicTemperature,
    /// Mean excess temperature of the rating: 50 K for 75/65/20 °C.
    #[field("\\Delta t_n", KELVIN, 5.0..=80.0, default = 50.0)]
    pub rated_mean_excess: TemperatureInterval,
}

/// The condition at which emitter and water agree.
#[record]
pub struct EmitterAtFlowResult {
    /// Return temperature.
    #[field("t_R", DEGREE_CELSIUS)]
    pub return_temperature: ThermodynamicTemperature,
    /// Temperature drop.
    #[field("\\Delta t", KELVIN)]
    pub temperature_drop: TemperatureInterval,
    /// Output.
    #[field("\\Phi", WATT)]
    pub heat_output: Power,
    /// Share of the rated output.
    #[field("f", ONE)]
    pub output_factor: Ratio,
}

/// Return temperature and output of an emitter from the water sent to it.
#[derive(Clone, Copy, Debug, Default)]
pub struct EmitterAtFlow {
    /// How the water temperature is averaged.
    pub mean: MeanExcess,
}

impl Context for EmitterAtFlow {
    const SETTINGS: &'static [Setting] = &[MEAN_SETTING];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        Ok(Self { mean: mean_from_settings(settings)? })
    }
}

/// Pressure at which the water's enthalpy is taken, Pa; it hardly matters.
const PRESSURE: f64 = 2.0e5;

impl EmitterAtFlow {
    /// Return temperature in K at which the water gives what the emitter does.
    fn solved_return(&self, input: &EmitterAtFlowInput) -> f64 {
        let (flow, room) = (input.flow_temperature.si(), input.room_temperature.si());
        let hot = heating_water(PRESSURE, flow).enthalpy;
        // The emitter gives more the warmer the return, the water less: one crossing between room
        // and flow temperature. 60 halvings are past the last bit.
        let (mut low, mut high) = (room, flow);
        for _ in 0..60 {
            let back = 0.5 * (low + high);
            let water = input.mass_flow.si() * (hot - heating_water(PRESSURE, back).enthalpy);
            let ratio = self.mean.of(flow - room, back - room) / input.rated_mean_excess.si();
            let emitter = input.rated_output.si() * pow(ratio, input.exponent.si());
            if water > emitter { low = back } else { high = back }
        }
        if hot.is_nan() { f64::NAN } else { 0.5 * (low + high) }
    }
}

rules! {
    refuse ROOM_TOO_WARM on "room_temperature": "the room must be colder than the flow, or the emitter gives no heat";
    notice USE_LOGARITHMIC on "return_temperature": "the return is so much cooler than the flow that the arithmetic mean promises too much; choose the logarithmic one";
}

impl Calculation for EmitterAtFlow {
    type Input = EmitterAtFlowInput;
    type Output = EmitterAtFlowResult;
    const INFO: Info = Info {
        name: "emitter_at_flow",
        title: "Emitter at a water flow",
        summary: "The return temperature at which the heat the water gives up is the heat the emitter gives off, and that heat.",
        sources: SOURCES,
        accuracy: ACCURACY,
        cautions: &[],
        checked_against: "no outside table exists; at the rated flow it returns the rated condition, and it agrees with emitter_output and heat_from_flow",
    };
    const RULES: &'static [Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &EmitterAtFlowInput) -> Raised {
        Raised::NONE.when(ROOM_TOO_WARM, input.room_temperature.si() >= input.flow_temperature.si())
    }

    #[inline]
    fn review(&self, input: &EmitterAtFlowInput, output: &EmitterAtFlowResult) -> Raised {
        let (flow, back) = (input.flow_temperature.si(), output.return_temperature.si());
        let room = input.room_temperature.si();
        Raised::NONE.when(USE_LOGARITHMIC, matches!(self.mean, MeanExcess::Arithmetic) & (back - room < 0.7 * (flow - room)))
    }

    fn compute<W: Working>(&self, input: &EmitterAtFlowInput, working: &mut W) -> EmitterAtFlowResult {
        let back = self.solved_return(input);
        let flow_enthalpy = AvailableEnergy::from_si(heating_water(PRESSURE, input.flow_temperature.si()).enthalpy);
        let return_enthalpy = AvailableEnergy::from_si(heating_water(PRESSURE, back).enthalpy);
        step!(working, let return_temperature: "t_R" = ThermodynamicTemperature::from_si(back), "solved: the water gives what the emitter does");
        step!(working, let temperature_drop: "\\Delta t" = TemperatureInterval::from_si(input.flow_temperature.si() - return_temperature.si()), "definition");
        step!(working, let heat_output: "\\Phi" in WATT = input.mass_flow * (flow_enthalpy - return_enthalpy), "energy balance");
        step!(working, let output_factor: "f" = heat_output / input.rated_output, "definition");
        EmitterAtFlowResult { return_temperature, temperature_drop, heat_output, output_factor }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Record;
    use crate::water::tests::assert_close;
    use flamewright_reference::rows;

    fn celsius(value: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si(value + 273.15)
    }

    #[test]
    fn reference_rows() {
        for row in rows("heat/radiator_factor.csv") {
            let (mean, flow, back, room) = match row.text("kind") {
                "factor" => (MeanExcess::Logarithmic, 20.0 + row.number("dT_K"), 20.0 + row.number("dT_K"), 20.0),
                kind => (
                    if kind.starts_with("log") { MeanExcess::Logarithmic } else { MeanExcess::Arithmetic },
                    row.number("T_flow_C"),
                    row.number("T_return_C"),
                    row.number("T_room_C"),
                ),
            };
            let factor_only = row.text("kind") == "factor";
            let input = EmitterOutputInput {
                rated_output: Power::from_si(1000.0),
                exponent: Ratio::from_si(row.number("n")),
                flow_temperature: celsius(flow),
                return_temperature: celsius(back),
                room_temperature: celsius(room),
                // The plain factors are against a mean excess of exactly 50 K.
                rated_flow_temperature: celsius(if factor_only { 70.0 } else { 75.0 }),
                rated_return_temperature: celsius(if factor_only { 70.0 } else { 65.0 }),
                wanted_output: Power::from_si(700.0),
                ..EmitterOutputInput::unset()
            };
            let got = EmitterOutput { mean }.evaluate(&input).unwrap();
            assert_close(got.output_factor.si(), row.number("factor_vs_dT50"), 1e-7, &row.place);
            assert_close(got.mean_excess.si(), row.number("mean_K"), 1e-7, &row.place);
            assert_close(got.heat_output.si(), 1000.0 * got.output_factor.si(), 1e-15, &row.place);
            assert_close(got.needed_rated_output.si(), 700.0 / row.number("factor_vs_dT50"), 1e-7, &row.place);
        }
        let published = rows("heat/published_hydraulic_examples.csv");
        let row = published.iter().find(|row| row.text("example_id") == "H04").unwrap();
        let input = EmitterOutputInput {
            rated_output: Power::from_si(1000.0),
            flow_temperature: celsius(85.0),
            return_temperature: celsius(75.0),
            ..EmitterOutputInput::unset()
        };
        let factor = EmitterOutput::default().evaluate(&input).unwrap().output_factor;
        assert_close(factor.si(), row.number("value_published"), 5e-4, &row.place);
    }

    #[test]
    fn logarithmic_mean_is_smooth_where_its_series_takes_over() {
        for x in [0.0, 9.99e-5, 1.001e-4, 1e-3] {
            let (a, b) = (30.0 * (1.0 + x), 30.0);
            let mean = MeanExcess::Logarithmic.of(a, b);
            // The mean of the two lies within x^2/12 of the arithmetic one.
            assert_close(mean, 0.5 * (a + b) * (1.0 - x * x / 12.0), 1e-9 * (1.0 + 100.0 * x), "series");
        }
        assert!(MeanExcess::Logarithmic.of(-1.0, 5.0).is_nan() && MeanExcess::Arithmetic.of(f64::NAN, 5.0).is_nan());
    }

    #[test]
    fn at_the_rated_flow_the_rated_condition_comes_back() {
        let drop = heating_water(PRESSURE, 348.15).enthalpy - heating_water(PRESSURE, 338.15).enthalpy;
        let input = EmitterAtFlowInput {
            rated_output: Power::from_si(1500.0),
            mass_flow: MassRate::from_si(1500.0 / drop),
            flow_temperature: celsius(75.0),
            ..EmitterAtFlowInput::unset()
        };
        let got = EmitterAtFlow::default().evaluate(&input).unwrap();
        assert_close(got.return_temperature.si(), 338.15, 1e-13, "return");
        assert_close(got.output_factor.si(), 1.0, 1e-11, "factor");
        // Less water: cooler return, less heat; and the emitter's own equation agrees.
        let less = EmitterAtFlow { mean: MeanExcess::Logarithmic }
            .evaluate(&EmitterAtFlowInput { mass_flow: MassRate::from_si(0.3 * input.mass_flow.si()), ..input })
            .unwrap();
        assert!(less.heat_output.si() < 0.95 * got.heat_output.si());
        let same = EmitterOutput { mean: MeanExcess::Logarithmic }
            .evaluate(&EmitterOutputInput {
                rated_output: input.rated_output,
                flow_temperature: input.flow_temperature,
                return_temperature: less.return_temperature,
                rated_flow_temperature: celsius(70.0),
                rated_return_temperature: celsius(70.0),
                ..EmitterOutputInput::unset()
            })
            .unwrap();
        assert_close(same.heat_output.si(), less.heat_output.si(), 1e-10, "both ways");
        let warm = EmitterAtFlowInput { room_temperature: celsius(45.0), flow_temperature: celsius(40.0), ..input };
        assert_eq!(EmitterAtFlow::default().evaluate(&warm).unwrap_err().code(), "ROOM_TOO_WARM");
    }
}
