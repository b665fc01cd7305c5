//! The calculation `installation_volume`: gas held by pipes, fittings and meter.

use super::CAUTION_TIGHTNESS;
use crate::Error;
use crate::calculation::{Calculation, Column, Context, Form, Info, Setting, Settings, Source, Table};
use crate::material::tube;
use crate::node::Node;
use crate::quantity::Value;
use crate::quantity::types::{Length, Ratio, Volume};
use crate::quantity::units::*;
use crate::record::record;
use crate::working::{Working, step};
use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;
use core::f64::consts::PI;

/// What holds gas beside the pipes.
#[record]
pub struct VolumeAllowances {
    /// Volume of gas in the meter; from its maker or the local procedure.
    #[field("V_m", LITRE, 0.0..=10000.0, default = 0.0)]
    pub meter_volume: Volume,
    /// Share of the pipe volume to add for fittings; from the local procedure.
    #[field("f", PERCENT, 0.0..=100.0, default = 0.0)]
    pub fittings_allowance: Ratio,
    /// Volume of vessels and appliances under test.
    #[field("V_a", LITRE, 0.0..=10000.0, default = 0.0)]
    pub other_volume: Volume,
}

/// Gas held by the installation.
#[record]
pub struct VolumeOfInstallation {
    /// Volume of the pipes.
    #[field("V_p", LITRE)]
    pub pipe_volume: Volume,
    /// Allowance for fittings.
    #[field("V_f", LITRE)]
    pub fittings_volume: Volume,
    /// Volume in all.
    #[field("V", LITRE)]
    pub installation_volume: Volume,
}

/// A length of pipe of one size.
#[derive(Clone, Debug, PartialEq)]
pub struct PipeContent {
    /// Its name, for the table.
    pub name: String,
    /// Bore.
    pub bore: Length,
    /// Length.
    pub length: Length,
}

impl PipeContent {
    /// Gas in it.
    #[must_use]
    pub fn volume(&self) -> Volume {
        PI / 4.0 * self.bore * self.bore * self.length
    }
}

/// Volume of gas in an installation of given pipes.
#[derive(Clone, Debug)]
pub struct InstallationVolume {
    pipe_volume: Volume,
    pipes: Vec<PipeContent>,
}

impl InstallationVolume {
    /// An installation made of `pipes`.
    #[must_use]
    pub fn new(pipes: Vec<PipeContent>) -> Self {
        let pipe_volume = pipes.iter().map(|pipe| pipe.volume().si()).sum();
        Self { pipe_volume: Volume::from_si(pipe_volume), pipes }
    }
}

/// Most pipes of one installation.
const MOST_PIPES: usize = 1000;

/// A pipe from a table of settings: `tube` by name, or `bore`, or `outside_diameter` with `wall`.
pub(super) fn bore_and_roughness(node: &Node, name: &str) -> Result<(Length, Option<Length>), Error> {
    let positive = |key: &str| -> Result<Option<Length>, Error> {
        let Some(given) = node.get(key) else { return Ok(None) };
        let value: Length = given.quantity(key)?;
        if value.si() > 0.0 && value.si() <= 10.0 {
            Ok(Some(value))
        } else {
            Err(Error::bad_setting(name, &given.brief(), "a diameter of a pipe lies between 0 and 10 m"))
        }
    };
    let roughness = match node.get("roughness") {
        Some(given) => Some(given.quantity::<Length>("roughness")?).filter(|value| value.si() >= 0.0),
        None => None,
    };
    if let Some(named) = node.get("tube") {
        let tube = tube(named.text("tube")?).map_err(|unknown| Error::bad_setting(name, &named.brief(), &unknown.to_string()))?;
        return Ok((Length::from_si(tube.bore()), Some(roughness.unwrap_or(Length::from_si(tube.roughness)))));
    }
    match (positive("bore")?, positive("outside_diameter")?, positive("wall")?) {
        (Some(bore), None, None) => Ok((bore, roughness)),
        (None, Some(outside), Some(wall)) if 2.0 * wall.si() < outside.si() => Ok((outside - 2.0 * wall, roughness)),
        _ => Err(Error::bad_setting(
            name,
            &node.brief(),
            "a pipe needs tube = \"copper 22x0.9\", or bore, or outside_diameter and wall (less than half of it)",
        )),
    }
}

impl Context for InstallationVolume {
    const SETTINGS: &'static [Setting] = &[Setting {
        name: "pipes",
        doc: "The pipes: a list of tables, each with length and either tube (by name), bore, or outside_diameter and wall; name if wanted.",
        form: Form::Structure,
        default: None,
    }];
    fn from_settings(settings: &Settings<'_>) -> Result<Self, Error> {
        let list = settings.need("pipes")?.list("pipes")?;
        if list.len() > MOST_PIPES {
            return Err(Error::bad_setting("pipes", "", &alloc::format!("{} pipes were given, {MOST_PIPES} at most", list.len())));
        }
        let mut pipes = Vec::with_capacity(list.len());
        for node in list {
            let given = node.get("length").ok_or_else(|| Error::missing("length", "the length of each pipe"))?;
            let length: Length = given.quantity("length")?;
            if !(length.si() >= 0.0 && length.si() <= 1e5) {
                return Err(Error::bad_setting("length", &given.brief(), "a length lies between 0 and 100 km"));
            }
            let (bore, _) = bore_and_roughness(node, "pipes")?;
            let label = node.get("name").or(node.get("tube")).map_or(Ok(""), |name| name.text("name"))?;
            pipes.push(PipeContent { name: label.into(), bore, length });
        }
        Ok(Self::new(pipes))
    }
}

impl Calculation for InstallationVolume {
    type Input = VolumeAllowances;
    type Output = VolumeOfInstallation;
    const INFO: Info = Info {
        name: "installation_volume",
        title: "Volume of a gas installation",
        summary: "Gas held by pipes, fittings and meter: what a tightness test and a purge are reckoned with.",
        sources: &[
            Source::new("Geometry", "pipe volume from the bore"),
            Source::new("common practice, no source", "fittings as a share of the pipe volume"),
        ],
        accuracy: "The tubes' tolerances, about 1 % to 3 %; fittings and meter as stated.",
        cautions: &[CAUTION_TIGHTNESS],
        checked_against: "trade/tightness.csv",
    };

    #[inline(always)]
    fn compute<W: Working>(&self, input: &VolumeAllowances, working: &mut W) -> VolumeOfInstallation {
        let pipe_volume = self.pipe_volume;
        step!(working, let fittings_volume: "V_f" in LITRE = pipe_volume * input.fittings_allowance, "local procedure");
        step!(working, let installation_volume: "V" in LITRE =
            pipe_volume + fittings_volume + input.meter_volume + input.other_volume, "definition");
        VolumeOfInstallation { pipe_volume, fittings_volume, installation_volume }
    }

    fn tables(&self, _input: &VolumeAllowances) -> Vec<Table> {
        let column = |name: &str, unit, value: &dyn Fn(&PipeContent) -> f64| Column {
            name: name.into(),
            unit,
            values: self.pipes.iter().map(value).collect(),
        };
        vec![Table {
            name: "pipes",
            row_names: self.pipes.iter().map(|pipe| pipe.name.clone()).collect(),
            columns: vec![
                column("bore", &MILLIMETRE, &|pipe| pipe.bore.si()),
                column("length", &METRE, &|pipe| pipe.length.si()),
                column("volume", &LITRE, &|pipe| pipe.volume().si()),
            ],
        }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Bare, evaluate};
    use crate::supply::trade::check;

    #[test]
    fn volumes_agree_with_the_table() {
        let file = "trade/tightness.csv";
        check(file, "volume_per_metre", |i, _| {
            let pipe = Node::from([
                ("outside_diameter", alloc::format!("{} m", i.si("outside_diameter")).as_str()),
                ("wall", alloc::format!("{} m", i.si("wall")).as_str()),
                ("length", alloc::format!("{} m", i.si("L")).as_str()),
            ]);
            evaluate("installation_volume", &Node::from([("pipes", Node::List(vec![pipe]))]), Bare::Refused)
                .unwrap()
                .get("installation_volume")
                .unwrap()
        });
        check(file, "installation_volume", |i, output| {
            let tube_name = |short: &str| match short {
                "Fe1/2M" => "steel medium 1/2".to_string(),
                "Fe3/4M" => "steel medium 3/4".to_string(),
                "Fe1M" => "steel medium 1".to_string(),
                copper => copper.replace("Cu", "copper "),
            };
            let pipes = i.0.iter().filter_map(|(key, (value, unit))| {
                let short = key.strip_prefix("pipe_")?;
                let length = alloc::format!("{value} {unit}");
                Some(Node::from([("tube", Node::Text(tube_name(short))), ("length", Node::Text(length))]))
            });
            let given = Node::Table(vec![
                ("pipes".into(), Node::List(pipes.collect())),
                ("meter_volume".into(), Node::Text(alloc::format!("{} m3", i.si("meter_volume")))),
                ("fittings_allowance".into(), Node::Text(alloc::format!("{} %", 100.0 * i.si("fittings_allowance")))),
            ]);
            evaluate("installation_volume", &given, Bare::Refused).unwrap().get(output).unwrap()
        });
    }

    #[test]
    fn pipes_that_make_no_sense_are_refused() {
        let refusal = |pipe: Node| {
            let given = Node::from([("pipes", Node::List(vec![pipe]))]);
            evaluate("installation_volume", &given, Bare::Refused).err().map(|error| error.to_string()).unwrap_or_default()
        };
        assert!(refusal(Node::from([("tube", "coper 22x0.9"), ("length", "3 m")])).contains("copper 22x0.9"));
        assert!(refusal(Node::from([("bore", "20 mm")])).contains("length"));
        assert!(refusal(Node::from([("bore", "-20 mm"), ("length", "3 m")])).contains("diameter"));
        assert!(refusal(Node::from([("outside_diameter", "20 mm"), ("wall", "10 mm"), ("length", "3 m")])).contains("wall"));
        assert!(refusal(Node::from([("bore", "20 mm"), ("length", "-3 m")])).contains("length"));
        assert_eq!(refusal(Node::from([("bore", "20 mm"), ("length", "3 m")])), "");
    }
}
