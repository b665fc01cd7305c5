//! The calculation `flame_supervision_voltage`: the readings of a thermo-electric flame supervision.

use crate::calculation::{Calculation, Info, Raised, Source};
use crate::quantity::Value;
use crate::quantity::types::{ElectricPotential, Ratio, Time};
use crate::quantity::units::MILLIVOLT;
use crate::record::record;
use crate::working::{Working, step};
use crate::{no_settings, rules};

/// Voltages of a thermocouple that holds a gas valve open.
#[record]
pub struct FlameSupervisionReading {
    /// Voltage of the thermocouple alone, pilot burning, nothing connected.
    #[field("U_0", MILLIVOLT, 0.0..=1000.0, usual = 10.0..=750.0, absent = "not measured")]
    pub open_circuit_voltage: ElectricPotential,
    /// Voltage with the electromagnet connected, pilot burning.
    #[field("U_L", MILLIVOLT, 0.0..=1000.0, usual = 5.0..=700.0)]
    pub loaded_voltage: ElectricPotential,
    /// Voltage at which the electromagnet let go after the pilot was put out.
    #[field("U_d", MILLIVOLT, 0.0..=1000.0, absent = "not measured")]
    pub drop_out_voltage: ElectricPotential,
    /// Time from putting the pilot out to the valve closing.
    #[field("\\tau_d", SECOND, 0.0..=600.0, usual = 1.0..=120.0, absent = "not measured")]
    pub closing_time: Time,
}

/// What the readings say of each other.
#[record]
pub struct FlameSupervisionState {
    /// Loaded voltage over the voltage at which the magnet lets go.
    #[field("k", ONE, absent = "drop-out not measured")]
    pub holding_ratio: Ratio,
    /// Loaded voltage less the voltage at which the magnet lets go.
    #[field("\\Delta U", MILLIVOLT, absent = "drop-out not measured")]
    pub holding_margin: ElectricPotential,
    /// Share of the open-circuit voltage that is lost when the magnet is connected.
    #[field("\\delta_U", PERCENT, absent = "open-circuit voltage not measured")]
    pub loss_under_load: Ratio,
    /// Time from putting the pilot out to the valve closing, as read.
    #[field("\\tau_d", SECOND, absent = "not measured")]
    pub closing_time: Time,
}

rules! {
    refuse MORE_UNDER_LOAD on "loaded_voltage": "a thermocouple gives less with the magnet connected than alone: readings exchanged";
    refuse HOLDS_BELOW_DROP_OUT on "drop_out_voltage": "the magnet cannot have held at a voltage below the one at which it let go: readings exchanged";
}

/// Readings of a thermo-electric flame supervision, side by side.
#[derive(Clone, Copy, Debug)]
pub struct FlameSupervision;

no_settings!(FlameSupervision);

impl Calculation for FlameSupervision {
    type Input = FlameSupervisionReading;
    type Output = FlameSupervisionState;
    const INFO: Info = Info {
        name: "flame_supervision_voltage",
        title: "Thermo-electric flame supervision",
        summary: "Margin of the thermocouple's voltage over what the electromagnet needs. Plain readings: what is enough is for the maker's instructions and the \
                  policy they are judged against.",
        sources: &[Source::new("comparison of readings, common practice, no source", "ratio and margins")],
        accuracy: "That of the millivoltmeter.",
        cautions: &[
            "A flame supervision is a safety device: never tie, bridge or adjust it to keep an appliance going.",
            "Prove that the valve closes with the flame out and that gas has stopped, before the appliance is left.",
        ],
        checked_against: "none: differences and ratios of readings, no published example found; own arithmetic in the tests",
    };
    const RULES: &'static [crate::calculation::Rule] = RULES;

    #[inline(always)]
    fn check(&self, input: &FlameSupervisionReading) -> Raised {
        Raised::NONE
            .when(MORE_UNDER_LOAD, input.loaded_voltage > input.open_circuit_voltage)
            .when(HOLDS_BELOW_DROP_OUT, input.loaded_voltage < input.drop_out_voltage)
    }

    #[inline(always)]
    fn compute<W: Working>(&self, input: &FlameSupervisionReading, working: &mut W) -> FlameSupervisionState {
        let FlameSupervisionReading { open_circuit_voltage, loaded_voltage, drop_out_voltage, closing_time } = *input;
        step!(working, let holding_margin: "\\Delta U" in MILLIVOLT = loaded_voltage - drop_out_voltage, "difference");
        step!(working, let quotient: "k" = loaded_voltage / drop_out_voltage, "ratio");
        step!(working, let loss: "\\delta_U" = (open_circuit_voltage - loaded_voltage) / open_circuit_voltage, "ratio");
        // Zero volts leave no ratio rather than an infinite one.
        let finite = |ratio: Ratio| if ratio.si().is_finite() { ratio } else { Ratio::from_si(f64::NAN) };
        FlameSupervisionState { holding_ratio: finite(quotient), holding_margin, loss_under_load: finite(loss), closing_time }
    }
}
