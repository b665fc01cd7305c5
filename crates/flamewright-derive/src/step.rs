//! The `step!` macro: the expression is left as it is, and its shape is read off beside it.
//!
//! The shape becomes a constant `Formula` whose leaves are numbered; the leaves themselves are
//! evaluated again only when the working is wanted, so the silent form is the bare `let`.

use proc_macro2::TokenStream;
use quote::{ToTokens, quote};
use syn::parse::{Parse, ParseStream};
use syn::spanned::Spanned;
use syn::{
    BinOp, Error, Expr, ExprCall, ExprMethodCall, GenericArgument, Ident, Lit, LitStr, Member, Path, PathArguments, Result, Token, Type,
    UnOp,
};

/// `working, let name: "symbol" [as Type] [in UNIT] = body, source`
struct Step {
    working: Expr,
    name: Ident,
    symbol: LitStr,
    kind: Option<Type>,
    unit: Option<Path>,
    body: Expr,
    source: Expr,
}

impl Parse for Step {
    fn parse(input: ParseStream) -> Result<Self> {
        let working = input.parse()?;
        input.parse::<Token![,]>()?;
        input.parse::<Token![let]>()?;
        let name = input.parse()?;
        input.parse::<Token![:]>()?;
        let symbol = input.parse()?;
        let kind = if input.parse::<Option<Token![as]>>()?.is_some() { Some(input.parse()?) } else { None };
        let unit = if input.parse::<Option<Token![in]>>()?.is_some() { Some(input.parse()?) } else { None };
        input.parse::<Token![=]>()?;
        let body = input.parse()?;
        input.parse::<Token![,]>()?;
        let source = input.parse()?;
        input.parse::<Option<Token![,]>>()?;
        Ok(Self { working, name, symbol, kind, unit, body, source })
    }
}

pub(crate) fn expand(input: TokenStream) -> Result<TokenStream> {
    let Step { working, name, symbol, kind, unit, body, source } = syn::parse2(input)?;
    let mut leaves = Leaves::default();
    let form = leaves.walk(&body)?;
    let leaves = leaves.found.iter().map(|leaf| &leaf.record);
    let kind = kind.map(|kind| quote!(: #kind));
    let unit = if let Some(unit) = unit { quote!(::core::option::Option::Some(#unit)) } else { quote!(::core::option::Option::None) };
    let spelled = name.to_string();
    // The name is bound last: until then the leaves of `let x = x + y` still hold what was put in.
    let computed = Ident::new("computed", proc_macro2::Span::mixed_site());
    Ok(quote! {
        let #computed #kind = #body;
        if ::flamewright::working::is_on(&*#working) {
            #[allow(unused_imports)]
            use ::flamewright::working::{Formula as __Formula, Function as __Function};
            const __FORM: &__Formula = &#form;
            ::flamewright::working::Working::step(&mut *#working, ::flamewright::working::Step::new(
                #spelled, #symbol, __FORM, [#(#leaves),*], &#computed, #unit, #source,
            ));
        }
        let #name = #computed;
    })
}

struct Leaf {
    /// What makes two leaves the same leaf.
    key: String,
    /// The expression that makes a `Leaf` at run time.
    record: TokenStream,
}

#[derive(Default)]
struct Leaves {
    found: Vec<Leaf>,
}

impl Leaves {
    fn number(&mut self, record: TokenStream) -> usize {
        let key = record.to_string();
        if let Some(known) = self.found.iter().position(|leaf| leaf.key == key) {
            known
        } else {
            self.found.push(Leaf { key, record });
            self.found.len() - 1
        }
    }

    fn leaf(&mut self, record: TokenStream) -> TokenStream {
        let index = self.number(record);
        quote!(__Formula::Leaf(#index))
    }

    fn named(&mut self, name: &Name, value: impl ToTokens) -> TokenStream {
        let Name { spelled, field } = name;
        self.leaf(quote!(::flamewright::working::Leaf::new(#spelled, #field, &(#value))))
    }

    fn walk(&mut self, expression: &Expr) -> Result<TokenStream> {
        match expression {
            Expr::Paren(inner) => self.walk(&inner.expr),
            Expr::Group(inner) => self.walk(&inner.expr),
            Expr::Reference(inner) => self.walk(&inner.expr),
            Expr::Unary(unary) => match unary.op {
                UnOp::Neg(_) => {
                    let inner = self.walk(&unary.expr)?;
                    Ok(quote!(__Formula::Negative(&#inner)))
                }
                UnOp::Deref(_) => self.seen_through(&unary.expr, expression),
                _ => Err(unshowable(expression)),
            },
            Expr::Cast(cast) => self.seen_through(&cast.expr, expression),
            Expr::Binary(binary) => {
                let form = match binary.op {
                    BinOp::Add(_) => quote!(Sum),
                    BinOp::Sub(_) => quote!(Difference),
                    BinOp::Mul(_) => quote!(Product),
                    BinOp::Div(_) => quote!(Quotient),
                    _ => return Err(unshowable(expression)),
                };
                let left = self.walk(&binary.left)?;
                let right = self.walk(&binary.right)?;
                Ok(quote!(__Formula::#form(&#left, &#right)))
            }
            Expr::Lit(literal) => match number_of(&literal.lit) {
                Some(number) => Ok(quote!(__Formula::Number(#number))),
                None => Err(unshowable(expression)),
            },
            Expr::MethodCall(call) => self.method(call, expression),
            Expr::Call(call) => self.function(call, expression),
            // `.value` is how uom spells the number in SI: the quantity itself is the leaf.
            Expr::Field(field) if is_named(&field.member, "value") => self.bared(&field.base, expression),
            _ => match name_of(expression) {
                Some(name) => Ok(self.named(&name, expression)),
                None => Err(unshowable(expression)),
            },
        }
    }

    /// A wrapper that changes the type but not the quantity: a leaf keeps its own name and takes
    /// the value of the whole; anything larger is walked as if the wrapper were not there.
    fn seen_through(&mut self, inner: &Expr, whole: &Expr) -> Result<TokenStream> {
        match name_of(inner) {
            Some(name) => Ok(self.named(&name, whole)),
            None => self.walk(inner),
        }
    }

    /// A getter that takes the unit off (`.value`, `.get()`): the leaf shows what stood before it.
    fn bared(&mut self, inner: &Expr, whole: &Expr) -> Result<TokenStream> {
        match name_of(inner) {
            Some(Name { spelled, field }) => {
                let probe = probe(inner);
                Ok(self.leaf(quote!(::flamewright::working::Leaf::bared(#spelled, #field, #probe, &(#whole)))))
            }
            None => self.walk(inner),
        }
    }

    fn method(&mut self, call: &ExprMethodCall, whole: &Expr) -> Result<TokenStream> {
        let method = call.method.to_string();
        let arguments: Vec<&Expr> = call.args.iter().collect();
        if let Some(generics) = &call.turbofish {
            return match (method.as_str(), generics.args.first()) {
                ("get", Some(GenericArgument::Type(Type::Path(unit)))) if arguments.is_empty() && is_coherent(&unit.path) => {
                    self.bared(&call.receiver, whole)
                }
                // A number taken in a unit of its own is not the quantity, and its symbol says so.
                ("get", Some(GenericArgument::Type(unit))) if arguments.is_empty() => match name_of(&call.receiver) {
                    Some(Name { spelled, field }) => Ok(self.leaf(quote!(
                        ::flamewright::working::Leaf::measured(#spelled, #field, &(#whole), ::flamewright::working::abbreviation::<#unit>())
                    ))),
                    None => Err(unshowable(whole)),
                },
                _ => self.opaque(&method, &[&[&*call.receiver], &arguments[..]].concat(), whole),
            };
        }
        match (method.as_str(), &arguments[..]) {
            ("get" | "si" | "plain" | "value" | "into" | "clone", []) => self.bared(&call.receiver, whole),
            ("recip", []) => {
                let inner = self.walk(&call.receiver)?;
                Ok(quote!(__Formula::Quotient(&__Formula::Number(1.0), &#inner)))
            }
            ("powi", [exponent]) => match whole_number(exponent) {
                Some(exponent) => {
                    let base = self.walk(&call.receiver)?;
                    Ok(quote!(__Formula::Power(&#base, &__Formula::Number(#exponent))))
                }
                None => Err(Error::new(exponent.span(), "the exponent shown must be a whole number or `P2::new()`")),
            },
            _ => {
                let all = [&[&*call.receiver], &arguments[..]].concat();
                match self.elementary(&method, &all)? {
                    Some(form) => Ok(form),
                    None => self.opaque(&method, &all, whole),
                }
            }
        }
    }

    fn function(&mut self, call: &ExprCall, whole: &Expr) -> Result<TokenStream> {
        let Expr::Path(path) = &*call.func else { return Err(unshowable(whole)) };
        let Some(last) = path.path.segments.last() else { return Err(unshowable(whole)) };
        let name = last.ident.to_string();
        let arguments: Vec<&Expr> = call.args.iter().collect();
        let within = path.path.segments.iter().rev().nth(1).map(|segment| segment.ident.to_string());
        if matches!(within.as_deref(), Some("math" | "f64" | "libm"))
            && let Some(form) = self.elementary(&name, &arguments)?
        {
            return Ok(form);
        }
        if let [inner] = arguments[..]
            && (name.starts_with(char::is_uppercase) || matches!(name.as_str(), "new" | "from" | "from_si" | "of"))
        {
            return self.wrapped(inner, &last.arguments, whole);
        }
        self.opaque(&name, &arguments, whole)
    }

    /// `Power::new::<watt>(x)` and the like.
    fn wrapped(&mut self, inner: &Expr, generics: &PathArguments, whole: &Expr) -> Result<TokenStream> {
        let coherent = match generics {
            PathArguments::AngleBracketed(generics) => {
                matches!(generics.args.first(), Some(GenericArgument::Type(Type::Path(unit))) if is_coherent(&unit.path))
            }
            _ => true,
        };
        match (inner, name_of(inner)) {
            (Expr::Lit(_), _) => Ok(self.leaf(quote!(::flamewright::working::Leaf::new("", false, &(#whole))))),
            (_, Some(name)) => Ok(self.named(&name, whole)),
            _ if coherent => self.walk(inner),
            _ => Err(unshowable(whole)),
        }
    }

    /// The functions a reader knows from school, which are shown as such and followed through.
    fn elementary(&mut self, name: &str, arguments: &[&Expr]) -> Result<Option<TokenStream>> {
        let arguments_form = |walker: &mut Self| arguments.iter().map(|argument| walker.walk(argument)).collect::<Result<Vec<_>>>();
        let function = match (name, arguments.len()) {
            ("sqrt", 1) => quote!(SquareRoot),
            ("cbrt", 1) => quote!(CubeRoot),
            ("abs", 1) => quote!(Magnitude),
            ("exp", 1) => quote!(Exponential),
            ("ln", 1) => quote!(NaturalLogarithm),
            ("log10", 1) => quote!(CommonLogarithm),
            ("sin", 1) => quote!(Sine),
            ("cos", 1) => quote!(Cosine),
            ("tanh", 1) => quote!(HyperbolicTangent),
            ("min", 2) => quote!(Least),
            ("max", 2) => quote!(Greatest),
            ("pow" | "powf", 2) => {
                let form = arguments_form(self)?;
                return Ok(Some(quote!(__Formula::Power(#(&#form),*))));
            }
            _ => return Ok(None),
        };
        let form = arguments_form(self)?;
        Ok(Some(quote!(__Formula::Function(__Function::#function, &[#(#form),*]))))
    }

    /// Any other call: shown by name with its arguments, and with the value it returned.
    fn opaque(&mut self, name: &str, arguments: &[&Expr], whole: &Expr) -> Result<TokenStream> {
        let forms = arguments
            .iter()
            .filter(|argument| !is_bare_self(argument))
            .map(|argument| self.argument(argument))
            .collect::<Result<Vec<_>>>()?;
        let index = self.number(quote!(::flamewright::working::Leaf::new(#name, false, &(#whole))));
        Ok(quote!(__Formula::Call(#index, &[#(#forms),*])))
    }

    /// An argument of an opaque call need not be a number: a fuel or a tube is shown by name only.
    fn argument(&mut self, argument: &Expr) -> Result<TokenStream> {
        match argument {
            Expr::Reference(inner) => self.argument(&inner.expr),
            _ => match name_of(argument) {
                Some(Name { spelled, field }) => {
                    let probe = probe(argument);
                    Ok(self.leaf(quote!(::flamewright::working::Leaf::probed(#spelled, #field, #probe))))
                }
                None => self.walk(argument),
            },
        }
    }
}

/// The value of an expression if it is a number or a quantity: of the two `probe` methods the one
/// that needs fewer references is taken, and that is the one for what can be shown.
fn probe(expression: &Expr) -> TokenStream {
    quote!({
        use ::flamewright::working::{ProbeOther as _, ProbeShown as _};
        (&::flamewright::working::Probe(&(#expression))).probe()
    })
}

struct Name {
    spelled: String,
    /// Whether it stands behind a dot, so that a record's field is meant before an earlier step.
    field: bool,
}

/// The name a leaf goes by, if the expression is a leaf.
fn name_of(expression: &Expr) -> Option<Name> {
    match expression {
        Expr::Path(path) if path.qself.is_none() => {
            path.path.segments.last().map(|segment| Name { spelled: segment.ident.to_string(), field: false })
        }
        Expr::Field(field) => match &field.member {
            Member::Named(member) if member != "value" => Some(Name { spelled: member.to_string(), field: true }),
            Member::Named(_) => None,
            Member::Unnamed(index) => {
                name_of(&field.base).map(|base| Name { spelled: format!("{}[{}]", base.spelled, index.index), field: true })
            }
        },
        Expr::Index(index) => {
            let base = name_of(&index.expr)?;
            let place = match &*index.index {
                Expr::Lit(literal) => literal.lit.to_token_stream().to_string(),
                place => name_of(place)?.spelled,
            };
            Some(Name { spelled: format!("{}[{place}]", base.spelled), field: base.field })
        }
        Expr::Paren(inner) => name_of(&inner.expr),
        Expr::Group(inner) => name_of(&inner.expr),
        Expr::Reference(inner) => name_of(&inner.expr),
        _ => None,
    }
}

fn is_named(member: &Member, name: &str) -> bool {
    matches!(member, Member::Named(member) if member == name)
}

fn is_bare_self(expression: &Expr) -> bool {
    matches!(expression, Expr::Path(path) if path.path.is_ident("self"))
}

fn number_of(literal: &Lit) -> Option<f64> {
    match literal {
        Lit::Float(number) => number.base10_parse().ok(),
        Lit::Int(number) => number.base10_parse().ok(),
        _ => None,
    }
}

/// `2`, `-2`, or typenum's `P2::new()` and `N2::new()`.
fn whole_number(expression: &Expr) -> Option<f64> {
    match expression {
        Expr::Lit(literal) => number_of(&literal.lit),
        Expr::Unary(unary) if matches!(unary.op, UnOp::Neg(_)) => whole_number(&unary.expr).map(|number| -number),
        Expr::Call(call) => {
            let Expr::Path(path) = &*call.func else { return None };
            let name = path.path.segments.iter().rev().nth(1)?.ident.to_string();
            match name.split_at_checked(1)? {
                ("P", digits) => digits.parse().ok(),
                ("N", digits) => digits.parse::<f64>().ok().map(|number| -number),
                ("Z", "0") => Some(0.0),
                _ => None,
            }
        }
        _ => None,
    }
}

/// Whether uom's name of a unit is built from coherent SI units alone, so that its number is the
/// number the rest of the shown line is in.
fn is_coherent(unit: &Path) -> bool {
    const WORDS: [&str; 17] = [
        "meter", "second", "kilogram", "kelvin", "pascal", "watt", "joule", "newton", "mole", "ampere", "volt", "ohm", "ratio", "radian",
        "square", "cubic", "per",
    ];
    unit.segments.last().is_some_and(|last| last.ident.to_string().split('_').all(|word| WORDS.contains(&word)))
}

fn unshowable(expression: &Expr) -> Error {
    Error::new(expression.span(), "a step cannot show this expression: bind it to a name in a line of its own, and use the name here")
}
