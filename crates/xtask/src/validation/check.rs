//! What `checks.toml` of a folder of reference tables says: how each kind of row is calculated.

use flamewright::node::Node;
use flamewright_reference::Row;

/// One way to calculate rows of one table.
pub(crate) struct Check {
    pub table: String,
    /// Columns and the texts they must hold for the row to be meant.
    rows: Vec<(String, Vec<String>)>,
    pub calculation: String,
    /// Settings and fields, with `{column}` where the row fills in.
    pub given: Vec<(String, Node)>,
    /// Calculations whose results the above and the results below may use, by the name given here.
    pub before: Vec<(String, Call)>,
    /// Half-width of a rectangular distribution of fields.
    pub uncertain: Vec<(String, Node)>,
    /// Column (or output of a row of the trade tables) and the sum that must reproduce it.
    pub results: Vec<(String, Expected)>,
    /// Columns (or outputs, or inputs) that are not used, and why.
    pub left: Vec<(String, String)>,
    /// Column and the dictionary that translates its words.
    pub words: Vec<(String, Vec<(String, Node)>)>,
    /// Another table of the folder whose row of the same key goes with this row.
    pub join: Option<Join>,
}

/// A calculation and what goes in.
pub(crate) struct Call {
    pub calculation: String,
    pub given: Vec<(String, Node)>,
}

/// A row of `table` whose column `with` holds what the column `on` of the row at hand holds.
pub(crate) struct Join {
    pub table: String,
    pub on: String,
    pub with: String,
}

/// `sum in unit within tolerance`.
pub(crate) struct Expected {
    pub sum: String,
    pub unit: Option<String>,
    pub tolerance: Option<String>,
}

/// Rows that no check takes, and why.
pub(crate) struct Left {
    pub table: String,
    rows: Vec<(String, Vec<String>)>,
    /// Why.
    pub reason: String,
}

/// A table of the folder.
pub(crate) struct Table {
    pub name: String,
    /// Where the numbers come from, unless the rows say so in a column `source`.
    pub source: String,
    /// Columns that are no values to compare, and what they are.
    pub left: Vec<(String, String)>,
    /// How a case is called: text with `{column}`; the line if there is none.
    pub case: String,
}

pub(crate) struct Mapping {
    pub tables: Vec<Table>,
    pub checks: Vec<Check>,
    pub left: Vec<Left>,
}

fn fields(node: Option<&Node>, name: &str) -> Result<Vec<(String, Node)>, String> {
    let Some(node) = node else { return Ok(Vec::new()) };
    Ok(node.entries(name).map_err(|e| e.to_string())?.map(|(k, v)| (k.to_owned(), v.clone())).collect())
}

fn text(node: &Node, key: &str) -> Result<String, String> {
    let found = node.get(key).ok_or_else(|| format!("{key} is missing in {}", node.brief()))?;
    found.text(key).map(str::to_owned).map_err(|e| e.to_string())
}

fn texts(node: Option<&Node>, name: &str) -> Result<Vec<(String, String)>, String> {
    fields(node, name)?
        .into_iter()
        .map(|(key, value)| value.text(&key).map(str::to_owned).map_err(|e| e.to_string()).map(|text| (key, text)))
        .collect()
}

/// The texts a column may hold: one, or a list.
fn chosen(node: Option<&Node>) -> Result<Vec<(String, Vec<String>)>, String> {
    fields(node, "rows")?
        .into_iter()
        .map(|(column, value)| {
            let list = match &value {
                Node::List(items) => items.as_slice(),
                one => std::slice::from_ref(one),
            };
            let words = list.iter().map(|item| item.text(&column).map(str::to_owned).map_err(|e| e.to_string()));
            Ok((column.clone(), words.collect::<Result<_, String>>()?))
        })
        .collect()
}

/// A text that ends in `*` means every text with this beginning; one that begins with `!` every other text.
fn meant(row: &Row, table: &str, rows: &[(String, Vec<String>)], of: &str) -> bool {
    let fits = |cell: &str, wanted: &String| match (wanted.strip_suffix('*'), wanted.strip_prefix('!')) {
        (_, Some(other)) => cell != other,
        (Some(start), None) => cell.starts_with(start),
        (None, None) => cell == wanted,
    };
    table == of && rows.iter().all(|(column, words)| words.iter().any(|word| fits(row.text(column), word)))
}

impl Check {
    pub(crate) fn takes(&self, table: &str, row: &Row) -> bool {
        meant(row, table, &self.rows, &self.table)
    }
    /// Columns by which the rows are chosen.
    pub(crate) fn choosing(&self) -> impl Iterator<Item = &str> {
        self.rows.iter().map(|(column, _)| column.as_str())
    }
}

impl Left {
    pub(crate) fn takes(&self, table: &str, row: &Row) -> bool {
        meant(row, table, &self.rows, &self.table)
    }
}

impl Expected {
    fn read(text: &str) -> Self {
        let (rest, tolerance) = text.split_once(" within ").map_or((text, None), |(a, b)| (a, Some(b.to_owned())));
        let (sum, unit) = rest.split_once(" in ").map_or((rest, None), |(a, b)| (a, Some(b.trim().to_owned())));
        Self { sum: sum.trim().to_owned(), unit, tolerance }
    }
}

fn check(node: &Node, dictionaries: &Node) -> Result<Check, String> {
    let dictionary = |(column, name): (String, String)| {
        let entries = fields(dictionaries.get(&name), &name)?;
        if entries.is_empty() { Err(format!("no dictionary {name}")) } else { Ok((column, entries)) }
    };
    for (key, _) in node.entries("check").map_err(|e| e.to_string())? {
        if !["table", "rows", "calculation", "given", "before", "uncertain", "results", "left", "words", "join"].contains(&key) {
            return Err(format!("a check has no {key}"));
        }
    }
    Ok(Check {
        table: text(node, "table")?,
        rows: chosen(node.get("rows"))?,
        calculation: text(node, "calculation")?,
        given: fields(node.get("given"), "given")?,
        before: fields(node.get("before"), "before")?
            .into_iter()
            .map(|(name, call)| Ok((name, Call { calculation: text(&call, "calculation")?, given: fields(call.get("given"), "given")? })))
            .collect::<Result<_, String>>()?,
        uncertain: fields(node.get("uncertain"), "uncertain")?,
        results: texts(node.get("results"), "results")?.into_iter().map(|(k, v)| (k, Expected::read(&v))).collect(),
        left: texts(node.get("left"), "left")?,
        join: match node.get("join") {
            Some(join) => Some(Join { table: text(join, "table")?, on: text(join, "on")?, with: text(join, "with")? }),
            None => None,
        },
        words: texts(node.get("words"), "words")?.into_iter().map(dictionary).collect::<Result<_, String>>()?,
    })
}

fn list<'a>(root: &'a Node, key: &str) -> Result<&'a [Node], String> {
    root.get(key).map_or(Ok(&[]), |node| node.list(key).map_err(|e| e.to_string()))
}

/// Reads a mapping.
pub(crate) fn read(toml: &str) -> Result<Mapping, String> {
    let root = Node::from_toml(toml).map_err(|e| e.to_string())?;
    let dictionaries = root.get("dictionary").cloned().unwrap_or_default();
    let tables = fields(root.get("tables"), "tables")?;
    Ok(Mapping {
        tables: tables
            .iter()
            .map(|(name, node)| {
                Ok(Table {
                    name: name.clone(),
                    source: node.get("source").map_or(Ok(String::new()), |_| text(node, "source"))?,
                    left: texts(node.get("left"), "left")?,
                    case: node.get("case").map_or(Ok(String::new()), |_| text(node, "case"))?,
                })
            })
            .collect::<Result<_, String>>()?,
        checks: list(&root, "check")?.iter().map(|node| check(node, &dictionaries)).collect::<Result<_, _>>()?,
        left: list(&root, "left")?
            .iter()
            .map(|node| Ok(Left { table: text(node, "table")?, rows: chosen(node.get("rows"))?, reason: text(node, "reason")? }))
            .collect::<Result<_, String>>()?,
    })
}
