//! Calculations one behind the other, as one function: what they share stays correlated.

use super::Model;
use crate::catalogue::Prepared;
use crate::error::Error;
use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec::Vec;

/// Where an input of a link comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Binding {
    /// A basic input of the chain, by its place.
    Input(usize),
    /// Output `output` of an earlier link.
    Output {
        /// The link, by its place.
        link: usize,
        /// The output, by its place.
        output: usize,
    },
    /// A fixed value, SI.
    Fixed(f64),
}

struct Link {
    prepared: Box<dyn Prepared>,
    bindings: Vec<Binding>,
    first_output: usize,
}

impl Link {
    /// Computes the link into its own places among all outputs.
    fn store(&self, given: &[f64], output: &mut [f64]) {
        let count = self.prepared.entry().outputs().len();
        if let Some(slots) = output.get_mut(self.first_output..self.first_output + count) {
            self.prepared.compute(given, slots);
        }
    }
}

/// A chain of calculations over basic inputs. Its outputs are those of all links, in order.
#[derive(Default)]
pub struct Chain {
    ranges: Vec<(f64, f64)>,
    names: Vec<String>,
    links: Vec<Link>,
    outputs: usize,
}

impl Chain {
    /// A chain without links.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }
    /// Adds a basic input and returns its place.
    pub fn input(&mut self, name: &str) -> usize {
        self.names.push(name.into());
        self.ranges.push((f64::NEG_INFINITY, f64::INFINITY));
        self.ranges.len() - 1
    }
    /// Adds a link whose inputs come from `bindings`, and returns its place.
    ///
    /// # Errors
    /// Another number of bindings than input fields; a binding to something that is not there yet,
    /// or that measures something else.
    pub fn link(&mut self, prepared: Box<dyn Prepared>, bindings: Vec<Binding>) -> Result<usize, Error> {
        let fields = prepared.entry().inputs();
        if fields.len() != bindings.len() {
            return Err(Error::bad_setting("bindings", "", &alloc::format!("{} are needed", fields.len())));
        }
        for (field, binding) in fields.iter().zip(&bindings) {
            match *binding {
                Binding::Input(i) => {
                    let range = self.ranges.get_mut(i).ok_or_else(|| Error::bad_setting(field.name, "", "there is no such basic input"))?;
                    *range = (range.0.max(field.minimum), range.1.min(field.maximum));
                }
                Binding::Output { link, output } => {
                    let source = self.links.get(link).and_then(|l| l.prepared.entry().outputs().get(output));
                    let source = source.ok_or_else(|| Error::bad_setting(field.name, "", "there is no such earlier output"))?;
                    if source.kind != field.kind {
                        let why = alloc::format!("a {} is needed, {} is a {}", field.kind.describe(), source.name, source.kind.describe());
                        return Err(Error::bad_setting(field.name, "", &why));
                    }
                }
                Binding::Fixed(_) => {}
            }
        }
        let first_output = self.outputs;
        self.outputs += prepared.entry().outputs().len();
        self.links.push(Link { prepared, bindings, first_output });
        Ok(self.links.len() - 1)
    }
    /// The place of an output of a link among all outputs of the chain.
    #[must_use]
    pub fn place(&self, link: usize, output: &str) -> Option<usize> {
        Some(self.first_place(link) + self.output_of(link, output)?)
    }
    /// The names of the basic inputs.
    #[must_use]
    pub fn names(&self) -> &[String] {
        &self.names
    }
    /// The input of each link at these basic inputs, SI, for validation and the working.
    #[must_use]
    pub fn link_inputs(&self, input: &[f64]) -> Vec<Vec<f64>> {
        let mut output = alloc::vec![0.0; self.outputs];
        let mut all = Vec::new();
        for link in &self.links {
            let given = self.gather(&link.bindings, input, &output);
            link.store(&given, &mut output);
            all.push(given);
        }
        all
    }
    /// The place of a result among the outputs of its link.
    #[must_use]
    pub fn output_of(&self, link: usize, output: &str) -> Option<usize> {
        self.links.get(link)?.prepared.entry().outputs().iter().position(|f| f.name == output)
    }
    /// The place of the first output of a link among all outputs of the chain.
    #[must_use]
    pub fn first_place(&self, link: usize) -> usize {
        self.links.get(link).map_or(0, |l| l.first_output)
    }
    /// What `bindings` come to at these basic inputs, SI.
    #[must_use]
    pub fn values_of(&self, bindings: &[Binding], input: &[f64]) -> Vec<f64> {
        let mut output = alloc::vec![f64::NAN; self.outputs];
        self.compute(input, &mut output);
        self.gather(bindings, input, &output)
    }
    fn gather(&self, bindings: &[Binding], input: &[f64], output: &[f64]) -> Vec<f64> {
        let value = |binding: &Binding| match *binding {
            Binding::Input(i) => input.get(i).copied().unwrap_or(f64::NAN),
            Binding::Output { link, output: place } => {
                self.links.get(link).and_then(|l| output.get(l.first_output + place)).copied().unwrap_or(f64::NAN)
            }
            Binding::Fixed(value) => value,
        };
        bindings.iter().map(value).collect()
    }
}

impl Model for Chain {
    fn inputs(&self) -> usize {
        self.ranges.len()
    }
    fn outputs(&self) -> usize {
        self.outputs
    }
    fn compute(&self, input: &[f64], output: &mut [f64]) {
        for link in &self.links {
            let given = self.gather(&link.bindings, input, output);
            link.store(&given, output);
        }
    }
    fn range(&self, i: usize) -> (f64, f64) {
        self.ranges.get(i).copied().unwrap_or((f64::NEG_INFINITY, f64::INFINITY))
    }
}
