//! Tables. One with many columns comes apart on a narrow screen: each row is then a list of its cells
//! with their heads, and stays a table for whoever has it read out.

use super::setting::Setting;
use crate::document::block::{Cell, Column, Table};
use crate::words::Value;

/// So many columns of words and figures fit side by side on a narrow screen (judgement).
const BESIDE: usize = 3;
/// Cells of a row that came apart stand two beside each other up to this count, else three (judgement).
const FEW: usize = 6;
/// Words longer than this take the whole width of a narrow screen, characters (judgement).
const LONG: usize = 28;

/// The roles of a table's parts, said aloud where the style sheet takes the table apart.
const ROLES: [(&str, &str); 6] = [
    ("table", "table"),
    ("thead", "rowgroup"),
    ("tbody", "rowgroup"),
    ("tr", "row"),
    ("th", "rowheader"),
    ("td", "cell"),
];

impl Setting {
    /// A table.
    pub(super) fn table(&mut self, table: &Table) {
        let heads: Vec<String> = table
            .columns
            .iter()
            .map(|c| self.writer.write(&c.title))
            .collect();
        self.markup.open("div", &[("class", "table")]);
        self.part("table", &[("class", kind(table))]);
        self.head(&heads, &table.columns);
        self.part("tbody", &[]);
        for row in &table.rows {
            self.row(row, &heads, &table.columns);
        }
        self.markup.close("tbody");
        self.markup.close("table");
        self.markup.close("div");
    }

    fn part(&mut self, tag: &str, more: &[(&str, &str)]) {
        let role = ROLES.iter().find(|(t, _)| *t == tag);
        let mut attributes: Vec<(&str, &str)> = role.iter().map(|(_, r)| ("role", *r)).collect();
        attributes.extend(more);
        self.markup.open(tag, &attributes);
    }

    fn head(&mut self, heads: &[String], columns: &[Column]) {
        self.part("thead", &[]);
        self.part("tr", &[]);
        for (head, column) in heads.iter().zip(columns) {
            if head.is_empty() {
                self.part("td", &[]);
                self.markup.close("td");
                continue;
            }
            let class = ("class", side(column));
            self.markup
                .open("th", &[("scope", "col"), ("role", "columnheader"), class]);
            self.words(head);
            self.markup.close("th");
        }
        self.markup.close("tr");
        self.markup.close("thead");
    }

    fn row(&mut self, cells: &[Cell], heads: &[String], columns: &[Column]) {
        self.part("tr", &[]);
        let named = cells.iter().position(|c| matches!(c, Cell::Value(_)));
        let name = named.map_or_else(String::new, |i| self.name_of(&cells[i], &heads[i]));
        for (i, ((cell, head), column)) in cells.iter().zip(heads).zip(columns).enumerate() {
            let shown = [("data-th", &**head), ("class", self.class(cell, column))];
            let tag = if named == Some(i) { "th" } else { "td" };
            let scope = (tag == "th").then_some(("scope", "row"));
            let attributes: Vec<(&str, &str)> = shown.into_iter().chain(scope).collect();
            self.part(tag, &attributes);
            self.cell(cell, &format!("{name}, {head}"));
            self.markup.close(tag);
        }
        self.markup.close("tr");
    }

    /// What a row is called: its first words, a bare number behind its head.
    fn name_of(&self, cell: &Cell, head: &str) -> String {
        match cell {
            Cell::Value(value @ Value::Count(_)) => {
                format!("{head} {}", self.writer.write(value))
            }
            Cell::Value(value) => self.writer.write(value),
            Cell::Tick | Cell::Blank | Cell::Empty => String::new(),
        }
    }

    fn class(&self, cell: &Cell, column: &Column) -> &'static str {
        match cell {
            Cell::Value(value) if self.writer.write(value).chars().count() > LONG => "words long",
            Cell::Value(_) => side(column),
            Cell::Tick => "tick",
            Cell::Blank => "blank",
            Cell::Empty => "empty",
        }
    }

    fn cell(&mut self, cell: &Cell, name: &str) {
        let name = name.trim_end_matches(", ");
        match cell {
            Cell::Value(value) => {
                let words = self.writer.write(value);
                self.words(&words);
            }
            Cell::Tick => self.tick(Some(name)),
            Cell::Blank => {
                let key = self.key();
                self.blank(&key, Some(name));
            }
            Cell::Empty => {}
        }
    }
}

/// How a table is shown on a narrow screen. A column to write in counts as two.
fn kind(table: &Table) -> &'static str {
    let needs = |column: usize| {
        let cells = table.rows.iter().filter_map(move |row| row.get(column));
        let each = cells.map(|cell| match cell {
            Cell::Value(_) => 1,
            Cell::Blank => 2,
            Cell::Tick | Cell::Empty => 0,
        });
        each.max().unwrap_or(0)
    };
    let needs = (0..table.columns.len()).map(needs).sum::<usize>();
    if needs <= BESIDE {
        "beside"
    } else if needs <= FEW {
        "stack"
    } else {
        "stack many"
    }
}

const fn side(column: &Column) -> &'static str {
    if column.figures { "figures" } else { "words" }
}
