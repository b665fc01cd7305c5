//! Batches in, batches out, in constant memory.

use super::over::Over;
use arrow_array::{RecordBatch, RecordBatchReader};
use arrow_schema::{ArrowError, SchemaRef};

/// Most rows evaluated at once, so that a table in one piece does not double its memory.
const PIECE: usize = 1 << 20;

/// The batches of `source` with their results, each computed when it is asked for.
pub struct Stream<R> {
    over: Over,
    source: R,
    batch: Option<RecordBatch>,
}

impl Over {
    /// The results of `batches`, one batch at a time; one of more than a million rows comes in several.
    pub fn stream<R>(self, batches: R) -> Stream<R> {
        Stream { over: self, source: batches, batch: None }
    }
}

impl<R: Iterator<Item = Result<RecordBatch, ArrowError>>> Iterator for Stream<R> {
    type Item = Result<RecordBatch, ArrowError>;

    fn next(&mut self) -> Option<Self::Item> {
        let batch = match self.batch.take() {
            Some(batch) => batch,
            None => match self.source.next()? {
                Ok(batch) => batch,
                Err(error) => return Some(Err(error)),
            },
        };
        let rows = batch.num_rows();
        let piece = if rows > PIECE {
            self.batch = Some(batch.slice(PIECE, rows - PIECE));
            batch.slice(0, PIECE)
        } else {
            batch
        };
        Some(self.over.evaluate(&piece).map_err(|error| ArrowError::ExternalError(Box::new(error))))
    }
}

impl<R: Iterator<Item = Result<RecordBatch, ArrowError>>> RecordBatchReader for Stream<R> {
    fn schema(&self) -> SchemaRef {
        self.over.schema()
    }
}
