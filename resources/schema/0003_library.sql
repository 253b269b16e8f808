-- From version 2 to 3: the shop's own rows of the library, every state they ever had, and their words.
CREATE TABLE library_revision(
  number INTEGER PRIMARY KEY,
  row INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('threads', 'grades', 'conditions', 'tapped_materials', 'bearing_faces', 'clearance_holes', 'thread_limits', 'prevailing_torques', 'tool_classes')),
  event TEXT NOT NULL CHECK (event IN ('added', 'changed', 'withdrawn')),
  line TEXT NOT NULL CHECK (line <> ''),
  at TEXT NOT NULL,
  by TEXT NOT NULL,
  remark TEXT NOT NULL) STRICT;
-- next
CREATE INDEX library_revision_row ON library_revision(row, number);
-- next
CREATE TRIGGER library_revision_no_update BEFORE UPDATE ON library_revision
BEGIN SELECT RAISE(ABORT, 'the history of the library is append-only'); END;
-- next
CREATE TRIGGER library_revision_no_delete BEFORE DELETE ON library_revision
BEGIN SELECT RAISE(ABORT, 'the history of the library is append-only'); END;
-- next
CREATE TRIGGER library_revision_no_replace BEFORE INSERT ON library_revision
WHEN EXISTS (SELECT 1 FROM library_revision WHERE number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'the history of the library is append-only'); END;
-- next
CREATE VIRTUAL TABLE library_words USING fts5(name, alias, note, kind, tokenize = "unicode61 remove_diacritics 2 tokenchars './#'", prefix = '1 2 3');
