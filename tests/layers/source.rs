//! Rust source as far as the house rules need it: words and signs without comments, texts and test
//! blocks, and the paths they spell.

/// A word or a sign of the source, and its line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Token {
    pub(crate) text: String,
    pub(crate) line: usize,
}

/// A path such as `crate::cut::Cut`, one for each name that a group brings in, and its line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Named {
    pub(crate) path: Vec<String>,
    pub(crate) line: usize,
}

/// The words and signs of a source, less comments, texts and what only tests compile.
pub(crate) fn tokens(source: &str) -> Vec<Token> {
    without_tests(&all_tokens(source))
}

fn all_tokens(source: &str) -> Vec<Token> {
    let letters: Vec<char> = source.chars().collect();
    let mut found = Vec::new();
    let (mut at, mut line) = (0, 1);
    while at < letters.len() {
        let end = match letters[at] {
            '/' if letters.get(at + 1) == Some(&'/') => end_of_line(&letters, at),
            '/' if letters.get(at + 1) == Some(&'*') => end_of_comment(&letters, at),
            '"' => end_of_text(&letters, at),
            'r' | 'b' | 'c' if text_start(&letters, at).is_some() => {
                let (quote, hashes) = text_start(&letters, at).unwrap();
                let raw = letters[at..quote].contains(&'r');
                if raw {
                    end_of_raw(&letters, quote, hashes)
                } else {
                    end_of_text(&letters, quote)
                }
            }
            '\'' => end_of_quote(&letters, at),
            c if is_word(c) => {
                let length = letters[at..].iter().take_while(|c| is_word(**c)).count();
                let text = letters[at..at + length].iter().collect();
                found.push(Token { text, line });
                at + length
            }
            c => {
                if !c.is_whitespace() {
                    let text = c.to_string();
                    found.push(Token { text, line });
                }
                at + 1
            }
        };
        line += letters[at..end].iter().filter(|c| **c == '\n').count();
        at = end;
    }
    found
}

fn is_word(c: char) -> bool {
    c == '_' || c.is_alphanumeric()
}

fn end_of_line(letters: &[char], at: usize) -> usize {
    let length = letters[at..].iter().take_while(|c| **c != '\n').count();
    at + length
}

/// Comments may stand in comments.
fn end_of_comment(letters: &[char], at: usize) -> usize {
    let mut deep = 0;
    let mut i = at;
    while i < letters.len() {
        match (letters[i], letters.get(i + 1)) {
            ('/', Some('*')) => (deep, i) = (deep + 1, i + 2),
            ('*', Some('/')) => (deep, i) = (deep - 1, i + 2),
            _ => i += 1,
        }
        if deep == 0 {
            return i;
        }
    }
    i
}

/// The quote that opens a prefixed text here (`r#"`, `b"`, `br"`) and its number of hashes.
fn text_start(letters: &[char], at: usize) -> Option<(usize, usize)> {
    let prefix = letters[at..].iter().take_while(|c| is_word(**c)).count();
    let name: String = letters[at..at + prefix].iter().collect();
    if !matches!(name.as_str(), "r" | "b" | "c" | "br" | "cr") {
        return None;
    }
    let after = &letters[at + prefix..];
    let hashes = after.iter().take_while(|c| **c == '#').count();
    (after.get(hashes) == Some(&'"')).then_some((at + prefix + hashes, hashes))
}

fn end_of_text(letters: &[char], quote: usize) -> usize {
    let mut i = quote + 1;
    while i < letters.len() {
        match letters[i] {
            '\\' => i += 2,
            '"' => return i + 1,
            _ => i += 1,
        }
    }
    letters.len()
}

fn end_of_raw(letters: &[char], quote: usize, hashes: usize) -> usize {
    let mut i = quote + 1;
    while i < letters.len() {
        let closing = letters[i + 1..].iter().take(hashes);
        if letters[i] == '"' && closing.filter(|c| **c == '#').count() == hashes {
            return i + 1 + hashes;
        }
        i += 1;
    }
    letters.len()
}

/// A letter in quotes, or a lifetime, of which the word is not wanted either.
fn end_of_quote(letters: &[char], at: usize) -> usize {
    match (letters.get(at + 1), letters.get(at + 2)) {
        (Some('\\'), _) => {
            let rest = letters[at + 3..].iter().take_while(|c| **c != '\'').count();
            at + 3 + rest + 1
        }
        (Some(_), Some('\'')) => at + 3,
        _ => {
            let name = letters[at + 1..].iter().take_while(|c| is_word(**c));
            at + 1 + name.count()
        }
    }
}

/// Leaves out each item behind `#[cfg(test)]`: up to its semicolon or its closing brace.
fn without_tests(tokens: &[Token]) -> Vec<Token> {
    const MARK: [&str; 7] = ["#", "[", "cfg", "(", "test", ")", "]"];
    let mut kept = Vec::new();
    let mut at = 0;
    while at < tokens.len() {
        let here = tokens[at..].iter().take(MARK.len());
        if here.map(|t| t.text.as_str()).eq(MARK) {
            at = end_of_item(tokens, at + MARK.len());
        } else {
            kept.push(tokens[at].clone());
            at += 1;
        }
    }
    kept
}

fn end_of_item(tokens: &[Token], from: usize) -> usize {
    let mut deep = 0;
    for (i, token) in tokens.iter().enumerate().skip(from) {
        match token.text.as_str() {
            "{" => deep += 1,
            "}" => deep -= 1,
            ";" if deep == 0 => return i + 1,
            _ => continue,
        }
        if deep == 0 && token.text == "}" {
            return i + 1;
        }
    }
    tokens.len()
}

/// Every path in a run of tokens; a group as in `use a::{b, c}` gives one path for each name.
pub(crate) fn paths(tokens: &[Token]) -> Vec<Named> {
    let mut found = Vec::new();
    let mut at = 0;
    while at < tokens.len() {
        if begins_path(tokens, at) {
            at = path(tokens, at, &[], &mut found);
        } else {
            at += 1;
        }
    }
    found
}

fn begins_path(tokens: &[Token], at: usize) -> bool {
    tokens[at].text.chars().all(is_word)
}

/// Reads one path with what stands before it; gives where it ends.
fn path(tokens: &[Token], at: usize, before: &[String], found: &mut Vec<Named>) -> usize {
    let line = tokens[at].line;
    let mut names = before.to_vec();
    let mut i = at;
    loop {
        names.push(tokens[i].text.clone());
        i += 1;
        let colons = tokens[i..].iter().take(2).filter(|t| t.text == ":").count() == 2;
        match tokens.get(i + 2).filter(|_| colons) {
            Some(next) if next.text == "{" => return group(tokens, i + 3, &names, found),
            Some(next) if next.text.chars().all(is_word) => i += 2,
            _ => break,
        }
    }
    found.push(Named { path: names, line });
    i
}

fn group(tokens: &[Token], from: usize, before: &[String], found: &mut Vec<Named>) -> usize {
    let mut i = from;
    while i < tokens.len() && tokens[i].text != "}" {
        if begins_path(tokens, i) {
            i = path(tokens, i, before, found);
        } else {
            i += 1;
        }
    }
    i + 1
}
