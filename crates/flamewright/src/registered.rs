//! The one list of calculations. A line here puts a calculation on every face.

/// Hands the list of all calculations to the macro `$then`.
#[macro_export]
macro_rules! for_each_calculation {
    ($then:ident) => {
        $then! {
            $crate::fuel::FuelProperties,
            $crate::fuel::GasPropertiesOf,
            $crate::water::LiquidWater,
            $crate::transient::CoolDown,
            $crate::supply::InstallationVolume,
            $crate::supply::TightnessTest,
            $crate::supply::TightnessPlan,
            $crate::supply::LetBy,
            $crate::supply::LeakScaling,
            $crate::supply::Purge,
            $crate::supply::PurgeVelocity,
            $crate::pipe::PipeHeatLoss,
            $crate::transient::BlockCoolDown,
            $crate::transient::BurnerCycling,
            $crate::transient::ThermostatDifferential,
            $crate::transient::ThermostatRepeatTest,
            $crate::material::TubeRun,
            $crate::system::FlowFromHeat,
            $crate::system::HeatFromFlow,
            $crate::system::EmitterOutput,
            $crate::system::EmitterAtFlow,
            $crate::system::WaterPressureDrop,
            $crate::system::StaticHead,
            $crate::supply::InjectorFlow,
            $crate::supply::InjectorSize,
            $crate::supply::BurnerPressure,
            $crate::supply::Altitude,
        }
    };
}
