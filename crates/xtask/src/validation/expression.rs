//! Sums in the mapping of reference rows: numbers, names, `+ - * / ^`, brackets, `sqrt`, `ln`, `abs`.

/// What a name stands for.
pub(crate) type Lookup<'a> = &'a dyn Fn(&str) -> Result<f64, String>;

struct Reader<'a> {
    rest: &'a str,
    look: Lookup<'a>,
}

/// The value of `text`, with names looked up by `look`.
pub(crate) fn value(text: &str, look: Lookup) -> Result<f64, String> {
    let mut reader = Reader { rest: text, look };
    let value = reader.sum()?;
    if reader.peek().is_some() {
        return Err(format!("\"{text}\": not understood from \"{}\"", reader.rest));
    }
    Ok(value)
}

impl Reader<'_> {
    fn peek(&mut self) -> Option<char> {
        self.rest = self.rest.trim_start();
        self.rest.chars().next()
    }
    fn take(&mut self, sign: char) -> bool {
        let found = self.peek() == Some(sign);
        if found {
            self.rest = &self.rest[sign.len_utf8()..];
        }
        found
    }
    fn sum(&mut self) -> Result<f64, String> {
        let mut value = self.product()?;
        loop {
            if self.take('+') {
                value += self.product()?;
            } else if self.take('-') {
                value -= self.product()?;
            } else {
                return Ok(value);
            }
        }
    }
    fn product(&mut self) -> Result<f64, String> {
        let mut value = self.power()?;
        loop {
            if self.take('*') {
                value *= self.power()?;
            } else if self.take('/') {
                value /= self.power()?;
            } else {
                return Ok(value);
            }
        }
    }
    fn power(&mut self) -> Result<f64, String> {
        if self.take('-') {
            return Ok(-self.power()?);
        }
        let base = self.atom()?;
        if self.take('^') { Ok(base.powf(self.power()?)) } else { Ok(base) }
    }
    fn atom(&mut self) -> Result<f64, String> {
        if self.take('(') {
            let value = self.sum()?;
            return if self.take(')') { Ok(value) } else { Err("a bracket is not closed".to_owned()) };
        }
        self.peek();
        let number = self.rest.starts_with(|c: char| c.is_ascii_digit() || c == '.');
        let mut end = 0;
        let mut before = ' ';
        for (place, sign) in self.rest.char_indices() {
            let exponent_sign = number && matches!(before, 'e' | 'E') && matches!(sign, '-' | '+');
            if !(sign.is_alphanumeric() || matches!(sign, '.' | '_') || exponent_sign) {
                break;
            }
            before = sign;
            end = place + sign.len_utf8();
        }
        let (word, rest) = self.rest.split_at(end);
        self.rest = rest;
        if number {
            return word.parse().map_err(|e| format!("{word}: {e}"));
        }
        let function: fn(f64) -> f64 = match word {
            "" => return Err(format!("a number or a name is needed at \"{}\"", self.rest)),
            "sqrt" => f64::sqrt,
            "ln" => f64::ln,
            "abs" => f64::abs,
            name => return (self.look)(name),
        };
        Ok(function(self.atom()?))
    }
}

#[cfg(test)]
mod tests {
    use super::value;

    #[test]
    fn sums_are_read_as_written() {
        let look = |name: &str| if name == "a.b_2" { Ok(3.0) } else { Err(format!("no {name}")) };
        for (text, expected) in
            [("1 + 2*3", 7.0), ("-(a.b_2 - 1)/4", -0.5), ("2e-1*10", 2.0), ("sqrt(16) - 2^3^1", -4.0), ("7 - 2 - 1", 4.0)]
        {
            assert_eq!(value(text, &look), Ok(expected), "{text}");
        }
        for wrong in ["1 +", "(2", "x", "2 3", ""] {
            assert!(value(wrong, &look).is_err(), "{wrong}");
        }
    }
}
