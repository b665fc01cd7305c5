//! Settings that each calculation can be made with.

use flamewright::calculation::Form;
use flamewright::catalogue::Entry;
use flamewright::node::Node;

const SETTINGS: &str = include_str!("../settings.json");

/// Settings written by hand for `entry`: at least one table, empty where nothing is needed.
///
/// # Panics
/// If the file cannot be read or names a calculation that does not exist.
#[must_use]
pub fn needed_settings(entry: &dyn Entry) -> Vec<Node> {
    let all = Node::from_json(SETTINGS).unwrap_or_else(|e| panic!("settings.json: {e}"));
    for (name, _) in all.entries("settings.json").unwrap_or_else(|e| panic!("{e}")) {
        flamewright::catalogue::calculation(name).unwrap_or_else(|e| panic!("settings.json: {e}"));
    }
    match all.get(entry.info().name) {
        Some(Node::List(tables)) => tables.clone(),
        _ => vec![Node::Table(Vec::new())],
    }
}

/// Those, and the first of them with every other word of every choice it can be made with.
#[must_use]
pub fn settings(entry: &dyn Entry) -> Vec<Node> {
    let mut tables = needed_settings(entry);
    let Some(Node::Table(first)) = tables.first().cloned() else { return tables };
    for setting in entry.settings() {
        let Form::Choice(words) = setting.form else { continue };
        for word in words {
            let mut entries: Vec<_> = first.iter().filter(|(name, _)| name != setting.name).cloned().collect();
            entries.push((setting.name.to_owned(), Node::from(*word)));
            let table = Node::Table(entries);
            if !tables.contains(&table) && entry.prepare(&table).is_ok() {
                tables.push(table);
            }
        }
    }
    tables
}
