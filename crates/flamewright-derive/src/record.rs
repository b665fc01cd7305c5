//! The `#[record]` attribute.

use proc_macro2::TokenStream;
use quote::quote;
use syn::parse::{Parse, ParseStream};
use syn::{Attribute, Expr, Fields, ItemStruct, LitStr, Meta, Path, Result, Token};

/// `#[field("symbol", UNIT, low..=high, usual = low..=high, default = x, absent = "text", detail = true)]`
struct FieldAttribute {
    symbol: LitStr,
    unit: Path,
    calls: Vec<TokenStream>,
}

impl Parse for FieldAttribute {
    fn parse(input: ParseStream<'_>) -> Result<Self> {
        let symbol = input.parse()?;
        input.parse::<Token![,]>()?;
        let unit = input.parse()?;
        let mut calls = Vec::new();
        while !input.is_empty() {
            input.parse::<Token![,]>()?;
            if input.is_empty() {
                break;
            }
            let name = if input.peek(syn::Ident) && input.peek2(Token![=]) {
                let name: syn::Ident = input.parse()?;
                input.parse::<Token![=]>()?;
                name.to_string()
            } else {
                "range".to_owned()
            };
            let value: Expr = input.parse()?;
            calls.push(match (name.as_str(), &value) {
                ("range" | "usual", Expr::Range(range)) => {
                    let (Some(low), Some(high)) = (&range.start, &range.end) else {
                        return Err(syn::Error::new_spanned(range, "both ends of the range are needed"));
                    };
                    let name = syn::Ident::new(&name, proc_macro2::Span::call_site());
                    quote!(.#name(#low, #high))
                }
                ("default", _) => quote!(.default(#value)),
                ("absent", _) => quote!(.absent(#value)),
                ("detail", _) => quote!(.detail(#value)),
                _ => return Err(syn::Error::new_spanned(value, "expected a range, usual =, default =, absent = or detail =")),
            });
        }
        Ok(Self { symbol, unit, calls })
    }
}

fn doc_of(attributes: &[Attribute]) -> String {
    let lines: Vec<String> = attributes
        .iter()
        .filter(|a| a.path().is_ident("doc"))
        .filter_map(|a| match &a.meta {
            Meta::NameValue(pair) => match &pair.value {
                Expr::Lit(syn::ExprLit { lit: syn::Lit::Str(text), .. }) => Some(text.value().trim().to_owned()),
                _ => None,
            },
            _ => None,
        })
        .collect();
    lines.join(" ")
}

pub(crate) fn expand(item: TokenStream) -> Result<TokenStream> {
    let mut item: ItemStruct = syn::parse2(item)?;
    let name = item.ident.clone();
    let name_text = name.to_string();
    let doc = doc_of(&item.attrs);
    let Fields::Named(fields) = &mut item.fields else {
        return Err(syn::Error::new_spanned(&name, "a record has named fields"));
    };
    let (mut described, mut idents, mut types) = (Vec::new(), Vec::new(), Vec::new());
    for field in &mut fields.named {
        let place = field.attrs.iter().position(|a| a.path().is_ident("field"));
        let Some(place) = place else {
            return Err(syn::Error::new_spanned(&field, "every field needs #[field(symbol, unit, …)]"));
        };
        let attribute: FieldAttribute = field.attrs.remove(place).parse_args()?;
        let field_doc = doc_of(&field.attrs);
        if field_doc.is_empty() {
            return Err(syn::Error::new_spanned(&field, "every field needs a doc comment: it is what people read on every face"));
        }
        let (ident, ty) = (field.ident.clone(), &field.ty);
        let text = ident.as_ref().map(ToString::to_string).unwrap_or_default();
        let FieldAttribute { symbol, unit, calls } = attribute;
        described.push(quote! {
            ::flamewright::record::Field::new(#text, #symbol, #field_doc, &::flamewright::quantity::units::#unit,
                <#ty as ::flamewright::quantity::Value>::KIND) #(#calls)*
        });
        idents.push(ident);
        types.push(ty.clone());
    }
    let count = idents.len();
    let places = 0..count;
    Ok(quote! {
        #[derive(Clone, Copy, Debug, PartialEq)]
        #[repr(C)]
        #item
        impl ::flamewright::record::Record for #name {
            type Array = [f64; #count];
            type Block = [[f64; ::flamewright::record::LANES]; #count];
            const BLOCK: Self::Block = [[0.0; ::flamewright::record::LANES]; #count];
            const NAME: &'static str = #name_text;
            const DOC: &'static str = #doc;
            const FIELDS: &'static [::flamewright::record::Field] = &[#(#described),*];
            #[inline(always)]
            fn to_array(&self) -> [f64; #count] {
                [#( ::flamewright::quantity::Value::si(self.#idents) ),*]
            }
            #[inline(always)]
            fn from_fn(mut value: impl FnMut(usize) -> f64) -> Self {
                Self { #( #idents: <#types as ::flamewright::quantity::Value>::from_si(value(#places)) ),* }
            }
        }
        const _: () = assert!(#count <= 64, "a record has at most 64 fields");
    })
}
