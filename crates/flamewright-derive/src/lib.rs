//! Macros of flamewright.

mod record;
mod step;

/// One step of a sum, computed and shown from the same expression; described at
/// `flamewright::working::step`, where it is meant to be imported from.
#[proc_macro]
pub fn step(input: proc_macro::TokenStream) -> proc_macro::TokenStream {
    step::expand(input.into()).unwrap_or_else(syn::Error::into_compile_error).into()
}

/// Makes a struct of quantities a record, whose fields programs can read; described at
/// `flamewright::record`, where it is meant to be imported from.
#[proc_macro_attribute]
pub fn record(arguments: proc_macro::TokenStream, item: proc_macro::TokenStream) -> proc_macro::TokenStream {
    if !arguments.is_empty() {
        return quote::quote!(compile_error!("#[record] takes no arguments");).into();
    }
    record::expand(item.into()).unwrap_or_else(syn::Error::into_compile_error).into()
}
