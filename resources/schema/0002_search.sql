-- From version 1 to 2: jobs and records are found as one types, by the beginnings of words.
CREATE VIRTUAL TABLE job_words USING fts5(
  job UNINDEXED, work_order, machine, model, serial, title, tokenize = 'unicode61', prefix = '1 2 3');
-- next
INSERT INTO job_words(job, work_order, machine, model, serial, title)
SELECT id, work_order, machine, model, serial, title FROM job ORDER BY started, id;
-- next
CREATE TRIGGER job_words_follow AFTER INSERT ON job
BEGIN
  INSERT INTO job_words(job, work_order, machine, model, serial, title)
  VALUES (NEW.id, NEW.work_order, NEW.machine, NEW.model, NEW.serial, NEW.title);
END;
