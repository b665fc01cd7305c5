//! Macros of flamewright.

mod step;

/// One step of a sum, computed and shown from the same expression; described at
/// `flamewright::working::step`, where it is meant to be imported from.
#[proc_macro]
pub fn step(input: proc_macro::TokenStream) -> proc_macro::TokenStream {
    step::expand(input.into()).unwrap_or_else(|error| error.into_compile_error()).into()
}
