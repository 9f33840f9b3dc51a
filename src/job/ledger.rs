//! What is noted while a job file is read: faults, remarks and assumptions.

use std::cell::{Cell, RefCell};

use super::Assumption;
use super::drawing::{Drawings, FigureFrame};
use super::words::length;
use crate::diag::{Diagnostic, Severity};
use crate::units::LengthUnit;

/// A byte range in the job text.
pub(super) type TextRange = Option<(usize, usize)>;

/// Everything noted in one reading, and the unit of bare numbers.
///
/// Shared by every reader of one file, so it is written through a shared reference.
#[derive(Debug, Default)]
pub(super) struct Ledger {
    noted: RefCell<Vec<Diagnostic>>,
    assumed: RefCell<Vec<Assumption>>,
    units: Cell<Units>,
    spoilt: bool,
    drawings: Drawings,
    slab_frame: RefCell<Option<FigureFrame>>,
}

/// What a bare number means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Units {
    /// The job file's unit.
    Known(LengthUnit),
    /// `job.units` is at fault, so that the range of a bare length cannot be judged.
    Unclear,
}

impl Default for Units {
    fn default() -> Self {
        Self::Known(LengthUnit::Millimetre)
    }
}

impl Ledger {
    /// An empty ledger. In a `spoilt` text some places are not TOML, so that nothing can be said to
    /// be missing.
    pub(super) fn new(spoilt: bool, drawings: Drawings) -> Self {
        Self {
            spoilt,
            drawings,
            ..Self::default()
        }
    }

    /// True when some of the text could not be read at all.
    pub(super) fn is_spoilt(&self) -> bool {
        self.spoilt
    }

    /// The text of a drawing, or why there is none.
    pub(super) fn drawing(&self, name: &str) -> Result<&str, &str> {
        match self.drawings.get(name) {
            Some(read) => read.as_ref().map(String::as_str).map_err(String::as_str),
            None => Err("drawings are not read here; use the program with the job's own file"),
        }
    }

    /// The frame of a slab that was taken from a drawing: flaws in the same drawing lie in it.
    pub(super) fn slab_frame(&self) -> Option<FigureFrame> {
        self.slab_frame.borrow().clone()
    }

    /// Says where that frame lies.
    pub(super) fn set_slab_frame(&self, frame: FigureFrame) {
        self.slab_frame.replace(Some(frame));
    }

    /// Notes a fault: the job cannot be planned.
    pub(super) fn fault(
        &self,
        key: impl Into<String>,
        span: TextRange,
        message: impl Into<String>,
        hint: impl Into<String>,
    ) {
        let fault = Diagnostic::fault(key, span, message, hint);
        self.noted.borrow_mut().push(fault);
    }

    /// Notes a remark: the job goes on.
    pub(super) fn remark(
        &self,
        key: impl Into<String>,
        span: TextRange,
        message: impl Into<String>,
        hint: impl Into<String>,
    ) {
        self.noted.borrow_mut().push(Diagnostic {
            severity: Severity::Remark,
            ..Diagnostic::fault(key, span, message, hint)
        });
    }

    /// Notes a value that was taken because the file left it open.
    pub(super) fn assume(
        &self,
        key: impl Into<String>,
        value: impl Into<String>,
        why: impl Into<String>,
    ) {
        self.assumed.borrow_mut().push(Assumption {
            key: key.into(),
            value: value.into(),
            why: why.into(),
        });
    }

    /// True when a fault was noted at a key that begins so.
    pub(super) fn has_fault_at(&self, start: &str) -> bool {
        let noted = self.noted.borrow();
        let mut faults = noted.iter().filter(|d| d.severity == Severity::Fault);
        faults.any(|d| d.key.starts_with(start))
    }

    /// Sets what a bare number means from here on.
    pub(super) fn set_units(&self, units: Units) {
        self.units.set(units);
    }

    /// What a bare number means.
    pub(super) fn units(&self) -> Units {
        self.units.get()
    }

    /// The unit of the job; millimetres when it is not clear.
    pub(super) fn length_unit(&self) -> LengthUnit {
        match self.units.get() {
            Units::Known(unit) => unit,
            Units::Unclear => LengthUnit::Millimetre,
        }
    }

    /// A length in the unit of the job, such as `640 mm` or `25.25 in`.
    pub(super) fn length(&self, mm: f64) -> String {
        length(self.length_unit(), mm)
    }

    /// The faults and remarks, and the assumptions, in the order they were noted.
    pub(super) fn close(self) -> (Vec<Diagnostic>, Vec<Assumption>) {
        (self.noted.into_inner(), self.assumed.into_inner())
    }
}
