//! The words of findings: templates with named gaps, so that a finding can be said in any language.

/// The words of one finding: a title and a detail with named gaps, such as `{minutes}`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Phrase {
    /// The finding's fixed name.
    pub id: &'static str,
    /// One line.
    pub title: &'static str,
    /// What, the number, the limit, what to do.
    pub detail: &'static str,
}

/// What is put into the gaps of a phrase: the gap's name and its words or number.
pub type Values = [(&'static str, String)];

/// A finding as it was said: its phrase and what stands in the gaps, so that it can be said again in
/// other words of the same gaps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// The phrase.
    pub phrase: &'static Phrase,
    /// What stands in its gaps.
    pub values: Vec<(&'static str, String)>,
}

impl Said {
    /// A template with this finding's values in its gaps.
    #[must_use]
    pub fn put_into(&self, template: &str) -> String {
        fill(template, &self.values)
    }
}

/// A number with a fixed count of decimals, for a gap.
///
/// ```
/// assert_eq!(kerfwright::diag::number(2.449, 1), "2.4");
/// ```
#[must_use]
pub fn number(value: f64, decimals: usize) -> String {
    format!("{value:.decimals$}")
}

/// A template with its gaps filled; a gap without a value stays as it is written.
///
/// ```
/// use kerfwright::diag::fill;
/// let words = fill("{a8} m/s² of {limit}", &[("a8", "2.4".into()), ("limit", "5".into())]);
/// assert_eq!(words, "2.4 m/s² of 5");
/// ```
#[must_use]
pub fn fill(template: &str, values: &Values) -> String {
    let mut words = String::with_capacity(template.len());
    let mut rest = template;
    while let Some((before, behind)) = rest.split_once('{') {
        words.push_str(before);
        let Some((name, after)) = behind.split_once('}') else {
            words.push('{');
            rest = behind;
            continue;
        };
        match values.iter().find(|(gap, _)| *gap == name) {
            Some((_, value)) => words.push_str(value),
            None => words.extend(["{", name, "}"]),
        }
        rest = after;
    }
    words.push_str(rest);
    words
}

/// The names of a template's gaps, in their order.
#[must_use]
pub fn gaps(template: &str) -> Vec<&str> {
    let parts = template.split('{').skip(1);
    parts
        .filter_map(|part| part.split_once('}').map(|(name, _)| name))
        .collect()
}
