-- From nothing to version 1: one shop, who works there, what with, on what, by which sheets, and what was done.
-- The one shop that this file is the book of. Its secret key is never in it.
CREATE TABLE shop(
  one INTEGER PRIMARY KEY CHECK (one = 1),
  id TEXT NOT NULL CHECK (length(id) = 36),
  name TEXT NOT NULL CHECK (name <> ''),
  public_key TEXT NOT NULL CHECK (length(public_key) = 64)) STRICT;
-- next
CREATE TRIGGER shop_stays BEFORE DELETE ON shop
BEGIN SELECT RAISE(ABORT, 'the shop itself stays'); END;
-- next
CREATE TRIGGER shop_once BEFORE INSERT ON shop WHEN EXISTS (SELECT 1 FROM shop)
BEGIN SELECT RAISE(ABORT, 'a shop file holds one shop'); END;
-- next
CREATE TRIGGER shop_id_stays BEFORE UPDATE OF one, id ON shop
BEGIN SELECT RAISE(ABORT, 'every chain begins with the id of the shop; it stays'); END;
-- next
CREATE TABLE person(
  sign TEXT NOT NULL PRIMARY KEY CHECK (length(sign) BETWEEN 1 AND 24),
  page TEXT NOT NULL CHECK (json_valid(page)),
  active INTEGER NOT NULL CHECK (active IN (0, 1)),
  pin_hash TEXT NOT NULL) STRICT;
-- next
-- Whoever signed once stays known.
CREATE TRIGGER person_stays BEFORE DELETE ON person
BEGIN SELECT RAISE(ABORT, 'a person is made inactive, not deleted'); END;
-- next
CREATE TABLE tool(
  id TEXT NOT NULL PRIMARY KEY CHECK (id <> ''),
  page TEXT NOT NULL CHECK (json_valid(page))) STRICT;
-- next
CREATE TRIGGER tool_stays BEFORE DELETE ON tool
BEGIN SELECT RAISE(ABORT, 'a tool is retired, not deleted'); END;
-- next
-- Every page a tool ever had, with what happened to it.
CREATE TABLE tool_history(
  number INTEGER PRIMARY KEY,
  tool TEXT NOT NULL REFERENCES tool(id),
  at TEXT NOT NULL,
  by TEXT NOT NULL,
  event TEXT NOT NULL CHECK (event IN ('entered', 'changed', 'calibrated', 'dropped', 'quarantined', 'released', 'retired')),
  remark TEXT NOT NULL,
  page TEXT NOT NULL CHECK (json_valid(page))) STRICT;
-- next
CREATE INDEX tool_history_tool ON tool_history(tool, number);
-- next
CREATE TABLE machine(
  id TEXT NOT NULL PRIMARY KEY CHECK (id <> ''),
  model TEXT NOT NULL,
  serial TEXT NOT NULL,
  hours TEXT NOT NULL) STRICT;
-- next
-- The exact bytes of sheets, found by their digest.
CREATE TABLE sheet_text(
  digest TEXT NOT NULL PRIMARY KEY CHECK (length(digest) = 64),
  bytes BLOB NOT NULL) STRICT;
-- next
CREATE TABLE sheet_revision(
  sheet TEXT NOT NULL CHECK (length(sheet) = 36),
  revision TEXT NOT NULL CHECK (revision <> ''),
  digest TEXT NOT NULL UNIQUE REFERENCES sheet_text(digest),
  title TEXT NOT NULL,
  model TEXT NOT NULL,
  author TEXT NOT NULL,
  status TEXT NOT NULL CHECK (status IN ('draft', 'in-review', 'issued', 'superseded', 'withdrawn')),
  independent INTEGER CHECK (independent IN (0, 1)),
  PRIMARY KEY (sheet, revision)) STRICT;
-- next
CREATE UNIQUE INDEX sheet_issued_once ON sheet_revision(sheet) WHERE status = 'issued';
-- next
-- Who moved a revision to which status, and when.
CREATE TABLE sheet_history(
  number INTEGER PRIMARY KEY,
  sheet TEXT NOT NULL,
  revision TEXT NOT NULL,
  status TEXT NOT NULL CHECK (status IN ('draft', 'in-review', 'issued', 'superseded', 'withdrawn')),
  at TEXT NOT NULL,
  by TEXT NOT NULL,
  remark TEXT NOT NULL) STRICT;
-- next
CREATE INDEX sheet_history_revision ON sheet_history(sheet, revision, number);
-- next
CREATE TABLE job(
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
  digest TEXT NOT NULL REFERENCES sheet_text(digest),
  sheet TEXT NOT NULL,
  revision TEXT NOT NULL,
  title TEXT NOT NULL,
  work_order TEXT NOT NULL,
  machine TEXT NOT NULL,
  model TEXT NOT NULL,
  serial TEXT NOT NULL,
  started TEXT NOT NULL) STRICT;
-- next
CREATE INDEX job_started ON job(started);
-- next
CREATE INDEX job_work_order ON job(work_order);
-- next
CREATE INDEX job_machine ON job(machine);
-- next
CREATE INDEX job_serial ON job(serial);
-- next
CREATE INDEX job_sheet ON job(sheet);
-- next
-- The facts of all jobs. `text` is the canonical entry; the other columns repeat parts of it for finding.
CREATE TABLE entry(
  job TEXT NOT NULL REFERENCES job(id),
  sequence INTEGER NOT NULL CHECK (sequence > 0),
  id TEXT NOT NULL UNIQUE CHECK (length(id) = 36),
  kind TEXT NOT NULL,
  text TEXT NOT NULL,
  previous TEXT NOT NULL UNIQUE CHECK (length(previous) = 64),
  hash TEXT NOT NULL UNIQUE CHECK (length(hash) = 64),
  PRIMARY KEY (job, sequence)) STRICT, WITHOUT ROWID;
-- next
CREATE INDEX entry_finished ON entry(job) WHERE kind = 'finished';
-- next
-- People and tools that a job's entries name, so that a bad wrench's jobs are found at once.
CREATE TABLE mention(
  what TEXT NOT NULL CHECK (what IN ('person', 'tool')),
  name TEXT NOT NULL,
  job TEXT NOT NULL REFERENCES job(id),
  PRIMARY KEY (what, name, job)) STRICT, WITHOUT ROWID;
-- next
CREATE INDEX mention_job ON mention(job);
-- next
CREATE TABLE record(
  job TEXT NOT NULL PRIMARY KEY REFERENCES job(id),
  bytes BLOB NOT NULL,
  digest TEXT NOT NULL CHECK (length(digest) = 64),
  head TEXT NOT NULL CHECK (length(head) = 64),
  count INTEGER NOT NULL CHECK (count > 0),
  sealed TEXT NOT NULL) STRICT;
-- next
CREATE TABLE addendum(
  job TEXT NOT NULL REFERENCES record(job),
  number INTEGER NOT NULL CHECK (number > 0),
  bytes BLOB NOT NULL,
  PRIMARY KEY (job, number)) STRICT;
-- next
-- Only a row here lets the entries and the record of its job be deleted.
CREATE TABLE disposal(
  job TEXT NOT NULL PRIMARY KEY REFERENCES job(id),
  at TEXT NOT NULL,
  by TEXT NOT NULL,
  reason TEXT NOT NULL CHECK (trim(reason) <> '')) STRICT;
-- next
-- Every PIN that was tried.
CREATE TABLE sign_in(
  number INTEGER PRIMARY KEY,
  sign TEXT NOT NULL,
  at TEXT NOT NULL,
  job TEXT NOT NULL,
  outcome TEXT NOT NULL CHECK (outcome IN ('accepted', 'wrong-pin', 'locked-out'))) STRICT;
-- next
CREATE INDEX sign_in_sign ON sign_in(sign, number);
-- next
-- Append-only tables. Each needs three guards: REPLACE deletes without a delete trigger unless the connection asks
-- for one, so an insert that meets any unique column is refused before it can replace.
CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'entries are append-only'); END;
-- next
CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry
WHEN NOT EXISTS (SELECT 1 FROM disposal WHERE job = OLD.job)
BEGIN SELECT RAISE(ABORT, 'entries are append-only; only a logged disposal removes them'); END;
-- next
CREATE TRIGGER entry_no_replace BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM entry WHERE job = NEW.job AND sequence = NEW.sequence)
  OR EXISTS (SELECT 1 FROM entry WHERE id = NEW.id)
  OR EXISTS (SELECT 1 FROM entry WHERE previous = NEW.previous)
  OR EXISTS (SELECT 1 FROM entry WHERE hash = NEW.hash)
BEGIN SELECT RAISE(ABORT, 'entries are append-only; this one would replace another'); END;
-- next
CREATE TRIGGER entry_not_after_disposal BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM disposal WHERE job = NEW.job)
BEGIN SELECT RAISE(ABORT, 'this job was disposed of'); END;
-- next
CREATE TRIGGER record_no_update BEFORE UPDATE ON record
BEGIN SELECT RAISE(ABORT, 'a sealed record is never changed'); END;
-- next
CREATE TRIGGER record_no_delete BEFORE DELETE ON record
WHEN NOT EXISTS (SELECT 1 FROM disposal WHERE job = OLD.job)
BEGIN SELECT RAISE(ABORT, 'a sealed record stays; only a logged disposal removes it'); END;
-- next
CREATE TRIGGER record_no_replace BEFORE INSERT ON record
WHEN EXISTS (SELECT 1 FROM record WHERE job = NEW.job) OR EXISTS (SELECT 1 FROM disposal WHERE job = NEW.job)
BEGIN SELECT RAISE(ABORT, 'a job is sealed once'); END;
-- next
CREATE TRIGGER addendum_no_update BEFORE UPDATE ON addendum
BEGIN SELECT RAISE(ABORT, 'an addendum is never changed'); END;
-- next
CREATE TRIGGER addendum_no_delete BEFORE DELETE ON addendum
WHEN NOT EXISTS (SELECT 1 FROM disposal WHERE job = OLD.job)
BEGIN SELECT RAISE(ABORT, 'an addendum stays; only a logged disposal removes it'); END;
-- next
CREATE TRIGGER addendum_no_replace BEFORE INSERT ON addendum
WHEN EXISTS (SELECT 1 FROM addendum WHERE job = NEW.job AND number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'an addendum is never replaced'); END;
-- next
CREATE TRIGGER job_no_update BEFORE UPDATE ON job
BEGIN SELECT RAISE(ABORT, 'how a job began is never changed'); END;
-- next
CREATE TRIGGER job_no_delete BEFORE DELETE ON job
BEGIN SELECT RAISE(ABORT, 'a job stays listed'); END;
-- next
CREATE TRIGGER job_no_replace BEFORE INSERT ON job WHEN EXISTS (SELECT 1 FROM job WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a job begins once'); END;
-- next
CREATE TRIGGER disposal_no_update BEFORE UPDATE ON disposal
BEGIN SELECT RAISE(ABORT, 'the log of disposals is append-only'); END;
-- next
CREATE TRIGGER disposal_no_delete BEFORE DELETE ON disposal
BEGIN SELECT RAISE(ABORT, 'the log of disposals is append-only'); END;
-- next
CREATE TRIGGER disposal_no_replace BEFORE INSERT ON disposal WHEN EXISTS (SELECT 1 FROM disposal WHERE job = NEW.job)
BEGIN SELECT RAISE(ABORT, 'the log of disposals is append-only'); END;
-- next
CREATE TRIGGER sign_in_no_update BEFORE UPDATE ON sign_in
BEGIN SELECT RAISE(ABORT, 'the log of sign-ins is append-only'); END;
-- next
CREATE TRIGGER sign_in_no_delete BEFORE DELETE ON sign_in
BEGIN SELECT RAISE(ABORT, 'the log of sign-ins is append-only'); END;
-- next
CREATE TRIGGER sign_in_no_replace BEFORE INSERT ON sign_in WHEN EXISTS (SELECT 1 FROM sign_in WHERE number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'the log of sign-ins is append-only'); END;
-- next
CREATE TRIGGER tool_history_no_update BEFORE UPDATE ON tool_history
BEGIN SELECT RAISE(ABORT, 'the history of tools is append-only'); END;
-- next
CREATE TRIGGER tool_history_no_delete BEFORE DELETE ON tool_history
BEGIN SELECT RAISE(ABORT, 'the history of tools is append-only'); END;
-- next
CREATE TRIGGER tool_history_no_replace BEFORE INSERT ON tool_history
WHEN EXISTS (SELECT 1 FROM tool_history WHERE number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'the history of tools is append-only'); END;
-- next
CREATE TRIGGER sheet_history_no_update BEFORE UPDATE ON sheet_history
BEGIN SELECT RAISE(ABORT, 'the history of sheets is append-only'); END;
-- next
CREATE TRIGGER sheet_history_no_delete BEFORE DELETE ON sheet_history
BEGIN SELECT RAISE(ABORT, 'the history of sheets is append-only'); END;
-- next
CREATE TRIGGER sheet_history_no_replace BEFORE INSERT ON sheet_history
WHEN EXISTS (SELECT 1 FROM sheet_history WHERE number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'the history of sheets is append-only'); END;
-- next
CREATE TRIGGER sheet_text_no_update BEFORE UPDATE ON sheet_text
BEGIN SELECT RAISE(ABORT, 'the bytes of a sheet are never changed'); END;
-- next
CREATE TRIGGER sheet_text_no_replace BEFORE INSERT ON sheet_text
WHEN EXISTS (SELECT 1 FROM sheet_text WHERE digest = NEW.digest)
BEGIN SELECT RAISE(ABORT, 'the bytes of a sheet are never replaced'); END;
-- next
CREATE TRIGGER sheet_text_no_delete BEFORE DELETE ON sheet_text
WHEN EXISTS (SELECT 1 FROM sheet_revision WHERE digest = OLD.digest)
  OR EXISTS (SELECT 1 FROM job WHERE digest = OLD.digest)
BEGIN SELECT RAISE(ABORT, 'a sheet or a job still needs these bytes'); END;
-- next
CREATE TRIGGER sheet_begins_as_draft BEFORE INSERT ON sheet_revision
WHEN NEW.status <> 'draft'
  OR EXISTS (SELECT 1 FROM sheet_revision WHERE (sheet = NEW.sheet AND revision = NEW.revision) OR digest = NEW.digest)
BEGIN SELECT RAISE(ABORT, 'a revision begins once, as a draft'); END;
-- next
CREATE TRIGGER sheet_frozen BEFORE UPDATE OF sheet, revision, digest, title, model, author ON sheet_revision
WHEN OLD.status <> 'draft' OR NEW.sheet <> OLD.sheet OR NEW.revision <> OLD.revision
BEGIN SELECT RAISE(ABORT, 'only a draft is changed; make a new revision'); END;
-- next
CREATE TRIGGER sheet_status_moves BEFORE UPDATE OF status ON sheet_revision
WHEN NEW.status <> OLD.status AND OLD.status || '>' || NEW.status NOT IN
  ('draft>in-review', 'in-review>draft', 'in-review>issued', 'issued>superseded', 'issued>withdrawn')
BEGIN SELECT RAISE(ABORT, 'a revision goes from draft to in review, issued, superseded or withdrawn'); END;
-- next
CREATE TRIGGER sheet_issue_alone BEFORE UPDATE OF status ON sheet_revision
WHEN NEW.status = 'issued' AND EXISTS
  (SELECT 1 FROM sheet_revision WHERE sheet = NEW.sheet AND revision <> NEW.revision AND status = 'issued')
BEGIN SELECT RAISE(ABORT, 'another revision of this sheet is issued; supersede it first'); END;
-- next
CREATE TRIGGER sheet_stays BEFORE DELETE ON sheet_revision WHEN OLD.status <> 'draft'
BEGIN SELECT RAISE(ABORT, 'only a draft is deleted'); END;
