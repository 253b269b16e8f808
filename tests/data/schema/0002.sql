-- A shop file of schema version 2 with a job under way: the dump of version 1, then the statements of 0002. Invented data.
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE shop(
  one INTEGER PRIMARY KEY CHECK (one = 1),
  id TEXT NOT NULL CHECK (length(id) = 36),
  name TEXT NOT NULL CHECK (name <> ''),
  public_key TEXT NOT NULL CHECK (length(public_key) = 64)) STRICT;
INSERT INTO shop VALUES(1,'019cb7a5-7580-729a-96f6-3bc778a50755','Test shop','747fc72ccba89f7215a95b2e6a553ce703c549c301a1aee5c63df2edc7b4812b');
CREATE TABLE person(
  sign TEXT NOT NULL PRIMARY KEY CHECK (length(sign) BETWEEN 1 AND 24),
  page TEXT NOT NULL CHECK (json_valid(page)),
  active INTEGER NOT NULL CHECK (active IN (0, 1)),
  pin_hash TEXT NOT NULL) STRICT;
INSERT INTO person VALUES('mira','{"name":"Mira Sol","roles":["technician"],"sign":"mira"}',1,'$argon2id$v=19$m=8,t=1,p=1$RPOxGJXv3OS/7te4MmDA2g$7EpHvF2LE9AEIpJ/4HaK+fu67sbIv41iYogYQDdSSrI');
INSERT INTO person VALUES('otto','{"name":"Otto Brand","roles":["inspector"],"sign":"otto"}',1,'$argon2id$v=19$m=8,t=1,p=1$RPOxGJXv3OS/7te4MmDA2g$7EpHvF2LE9AEIpJ/4HaK+fu67sbIv41iYogYQDdSSrI');
INSERT INTO person VALUES('lena','{"name":"Lena Fjord","roles":["shop-lead"],"sign":"lena"}',1,'$argon2id$v=19$m=8,t=1,p=1$RPOxGJXv3OS/7te4MmDA2g$7EpHvF2LE9AEIpJ/4HaK+fu67sbIv41iYogYQDdSSrI');
INSERT INTO person VALUES('wim','{"name":"Wim Post","roles":["service-writer"],"sign":"wim"}',1,'$argon2id$v=19$m=8,t=1,p=1$RPOxGJXv3OS/7te4MmDA2g$7EpHvF2LE9AEIpJ/4HaK+fu67sbIv41iYogYQDdSSrI');
INSERT INTO person VALUES('ada','{"apprentice":true,"name":"Ada Quill","roles":["technician"],"sign":"ada"}',1,'$argon2id$v=19$m=8,t=1,p=1$RPOxGJXv3OS/7te4MmDA2g$7EpHvF2LE9AEIpJ/4HaK+fu67sbIv41iYogYQDdSSrI');
INSERT INTO person VALUES('tilda','{"name":"Tilda Ros","roles":["trainer"],"sign":"tilda"}',1,'$argon2id$v=19$m=8,t=1,p=1$RPOxGJXv3OS/7te4MmDA2g$7EpHvF2LE9AEIpJ/4HaK+fu67sbIv41iYogYQDdSSrI');
CREATE TABLE tool(
  id TEXT NOT NULL PRIMARY KEY CHECK (id <> ''),
  page TEXT NOT NULL CHECK (json_valid(page))) STRICT;
INSERT INTO tool VALUES('T-07','{"calibrations":[{"certificate":"C-1","date":"2026-01-10","due":"2027-01-10","points":[],"uncertainty":"0.01"}],"class":"A","cycles":0,"cycles_due":0,"deviation":"0.04","id":"T-07","kind":"click wrench","left_hand":false,"scales":[{"graduation":{"unit":"lbf.in","value":"1"},"high":{"unit":"lbf.in","value":"150"},"low":{"unit":"lbf.in","value":"20"}}],"serial":"","status":"in-use","type":"setting"}');
INSERT INTO tool VALUES('T-08','{"calibrations":[{"certificate":"C-1","date":"2026-01-10","due":"2026-02-01","points":[],"uncertainty":"0.01"}],"class":"A","cycles":0,"cycles_due":0,"deviation":"0.04","id":"T-08","kind":"click wrench","left_hand":false,"scales":[{"graduation":{"unit":"lbf.in","value":"1"},"high":{"unit":"lbf.in","value":"150"},"low":{"unit":"lbf.in","value":"20"}}],"serial":"","status":"in-use","type":"setting"}');
CREATE TABLE tool_history(
  number INTEGER PRIMARY KEY,
  tool TEXT NOT NULL REFERENCES tool(id),
  at TEXT NOT NULL,
  by TEXT NOT NULL,
  event TEXT NOT NULL CHECK (event IN ('entered', 'changed', 'calibrated', 'dropped', 'quarantined', 'released', 'retired')),
  remark TEXT NOT NULL,
  page TEXT NOT NULL CHECK (json_valid(page))) STRICT;
INSERT INTO tool_history VALUES(1,'T-07','2026-03-04T08:00:01.000+01:00','lena','entered','','{"calibrations":[{"certificate":"C-1","date":"2026-01-10","due":"2027-01-10","points":[],"uncertainty":"0.01"}],"class":"A","cycles":0,"cycles_due":0,"deviation":"0.04","id":"T-07","kind":"click wrench","left_hand":false,"scales":[{"graduation":{"unit":"lbf.in","value":"1"},"high":{"unit":"lbf.in","value":"150"},"low":{"unit":"lbf.in","value":"20"}}],"serial":"","status":"in-use","type":"setting"}');
INSERT INTO tool_history VALUES(2,'T-08','2026-03-04T08:00:01.000+01:00','lena','entered','','{"calibrations":[{"certificate":"C-1","date":"2026-01-10","due":"2026-02-01","points":[],"uncertainty":"0.01"}],"class":"A","cycles":0,"cycles_due":0,"deviation":"0.04","id":"T-08","kind":"click wrench","left_hand":false,"scales":[{"graduation":{"unit":"lbf.in","value":"1"},"high":{"unit":"lbf.in","value":"150"},"low":{"unit":"lbf.in","value":"20"}}],"serial":"","status":"in-use","type":"setting"}');
CREATE TABLE machine(
  id TEXT NOT NULL PRIMARY KEY CHECK (id <> ''),
  model TEXT NOT NULL,
  serial TEXT NOT NULL,
  hours TEXT NOT NULL) STRICT;
INSERT INTO machine VALUES('P-1','Test pump','S-100','412 h');
CREATE TABLE sheet_text(
  digest TEXT NOT NULL PRIMARY KEY CHECK (length(digest) = 64),
  bytes BLOB NOT NULL) STRICT;
INSERT INTO sheet_text VALUES('afb65dfe7effd5628a04b07abd06055dc664ea6bb84c4ae9cffffd58d05e83c6',X'7b0a202022617574686f72223a202274696c6461222c0a20202266617374656e657273223a205b0a202020207b0a202020202020226772616465223a20225341452035222c0a202020202020226964223a20227363726577222c0a202020202020226b696e64223a20227363726577222c0a20202020202022746872656164223a2022312f342d323020554e43220a202020207d0a20205d2c0a202022666f726d6174223a2022636c616d707772696768742e7368656574222c0a2020226964223a202230313930303030302d303030302d373030302d383030302d303030303030303030303031222c0a2020226a6f696e7473223a205b0a202020207b0a2020202020202266617374656e6572223a20227363726577222c0a202020202020226964223a2022636f766572222c0a202020202020226c61796f7574223a207b0a202020202020202022636972636c65223a207b0a2020202020202020202022636f756e74223a20342c0a20202020202020202020226469616d65746572223a20223830220a20202020202020207d2c0a202020202020202022756e6974223a20226d6d220a2020202020207d2c0a202020202020226e616d65223a20225465737420636f766572222c0a202020202020226f72646572223a205b0a20202020202020202231222c0a20202020202020202233222c0a20202020202020202232222c0a20202020202020202234220a2020202020205d2c0a20202020202022706173736573223a207b0a20202020202020202262795f68616e64223a20747275652c0a202020202020202022636865636b223a207b0a20202020202020202020226c696d6974223a20320a20202020202020207d2c0a2020202020202020227368617265735f70657263656e74223a205b0a20202020202020202020223530222c0a2020202020202020202022313030220a20202020202020205d0a2020202020207d2c0a2020202020202272756c65223a202273746172222c0a2020202020202273706563696669636174696f6e223a2022746f72717565220a202020207d0a20205d2c0a2020226d6f64656c223a2022546573742070756d70222c0a2020226e6f74696365223a2022496e76656e74656420646174612c206e6f7420666f72207573652e222c0a2020227061727473223a205b0a202020207b0a20202020202022636f756e74223a20312c0a202020202020226964223a20226761736b6574222c0a202020202020226e616d65223a2022436f766572206761736b6574222c0a2020202020202273696e676c655f757365223a20747275650a202020207d2c0a202020207b0a2020202020202262617463685f77616e746564223a20747275652c0a20202020202022636f756e74223a20312c0a202020202020226964223a2022636f6d706f756e64222c0a202020202020226e616d65223a202254687265616420636f6d706f756e64220a202020207d0a20205d2c0a2020227265766973696f6e223a202241222c0a20202273657269616c73223a2022616c6c222c0a202022736f7572636573223a205b0a202020207b0a2020202020202264617465223a2022323032342d30352d3031222c0a20202020202022646f63756d656e74223a202254657374206d616e75616c222c0a202020202020226964223a20226d616e75616c222c0a2020202020202270616765223a20223132222c0a202020202020227265766973696f6e223a202233220a202020207d0a20205d2c0a20202273706563696669636174696f6e73223a205b0a202020207b0a2020202020202261696d223a207b0a202020202020202022756e6974223a20226c62662e696e222c0a20202020202020202276616c7565223a20223635220a2020202020207d2c0a20202020202022636f6e646974696f6e223a2022647279222c0a2020202020202268696768223a207b0a202020202020202022756e6974223a20226c62662e696e222c0a20202020202020202276616c7565223a20223730220a2020202020207d2c0a202020202020226964223a2022746f72717565222c0a20202020202022696e7465727072657465645f6279223a202274696c6461222c0a202020202020226c6f77223a207b0a202020202020202022756e6974223a20226c62662e696e222c0a20202020202020202276616c7565223a20223630220a2020202020207d2c0a202020202020226d6574686f64223a2022746f72717565222c0a202020202020227072696e746564223a202236302d373020696e2e206c62732e222c0a2020202020202272656164696e67223a202272616e6765222c0a20202020202022736f75726365223a20226d616e75616c222c0a20202020202022746f6c6572616e63655f737461746564223a20747275650a202020207d0a20205d2c0a2020227374657073223a205b0a202020207b0a202020202020226964223a20227331222c0a202020202020226b696e64223a2022616374222c0a2020202020202270617274223a20226761736b6574222c0a2020202020202274657874223a202246697420746865206e6577206761736b65742e222c0a202020202020227761726e696e6773223a205b0a2020202020202020225061727473206d6f76653a20746865206472697665206d7573742062652069736f6c6174656420616e64206c6f636b6564206f75742e220a2020202020205d0a202020207d2c0a202020207b0a202020202020226964223a20227332222c0a202020202020226b696e64223a2022636865636b222c0a2020202020202274657874223a20224c6f6f6b207768657468657220746865206661636520697320636c65616e2e220a202020207d2c0a202020207b0a2020202020202268696768223a2022302e3130222c0a202020202020226964223a20227333222c0a202020202020226b696e64223a20226d656173757265222c0a202020202020226c6f77223a202230222c0a2020202020202274657874223a20224d656173757265207468652073746570206265747765656e207468652066616365732e222c0a20202020202022756e6974223a20226d6d220a202020207d2c0a202020207b0a202020202020226964223a20227334222c0a202020202020226b696e64223a20226170706c79222c0a2020202020202270617274223a2022636f6d706f756e64222c0a2020202020202274657874223a202250757420636f6d706f756e64206f6e2074686520746872656164732e220a202020207d2c0a202020207b0a20202020202022686f6c64223a207b0a20202020202020202277686174223a205b0a202020202020202020202273657474696e67220a20202020202020205d2c0a2020202020202020227769746e657373223a2022696e646570656e64656e74220a2020202020207d2c0a202020202020226964223a20227335222c0a202020202020226a6f696e74223a2022636f766572222c0a202020202020226b696e64223a20227469676874656e222c0a2020202020202274657874223a20225469676874656e2074686520636f7665722e220a202020207d2c0a202020207b0a20202020202022686f6c64223a207b0a20202020202020202277686174223a205b0a20202020202020202020226d61726b73220a20202020202020205d2c0a2020202020202020227769746e657373223a202277617463686564220a2020202020207d2c0a202020202020226964223a20227336222c0a202020202020226b696e64223a2022686f6c64222c0a2020202020202274657874223a20224c6f6f6b20617420746865206d61726b732e220a202020207d0a20205d2c0a2020227469746c65223a2022436c6f736520746865207465737420636f766572222c0a20202276657273696f6e223a20310a7d0a');
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
INSERT INTO sheet_revision VALUES('01900000-0000-7000-8000-000000000001','A','afb65dfe7effd5628a04b07abd06055dc664ea6bb84c4ae9cffffd58d05e83c6','Close the test cover','Test pump','tilda','issued',1);
CREATE TABLE sheet_history(
  number INTEGER PRIMARY KEY,
  sheet TEXT NOT NULL,
  revision TEXT NOT NULL,
  status TEXT NOT NULL CHECK (status IN ('draft', 'in-review', 'issued', 'superseded', 'withdrawn')),
  at TEXT NOT NULL,
  by TEXT NOT NULL,
  remark TEXT NOT NULL) STRICT;
INSERT INTO sheet_history VALUES(1,'01900000-0000-7000-8000-000000000001','A','draft','2026-03-04T08:00:01.000+01:00','tilda','');
INSERT INTO sheet_history VALUES(2,'01900000-0000-7000-8000-000000000001','A','in-review','2026-03-04T08:00:01.000+01:00','tilda','');
INSERT INTO sheet_history VALUES(3,'01900000-0000-7000-8000-000000000001','A','issued','2026-03-04T08:00:01.000+01:00','lena','');
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
INSERT INTO job VALUES('019cb7a5-7d50-756d-af28-754e675f2957','afb65dfe7effd5628a04b07abd06055dc664ea6bb84c4ae9cffffd58d05e83c6','01900000-0000-7000-8000-000000000001','A','Close the test cover','WO 1','P-1','Test pump','S-100','2026-03-04T07:00:04.000+00:00');
CREATE TABLE entry(
  job TEXT NOT NULL REFERENCES job(id),
  sequence INTEGER NOT NULL CHECK (sequence > 0),
  id TEXT NOT NULL UNIQUE CHECK (length(id) = 36),
  kind TEXT NOT NULL,
  text TEXT NOT NULL,
  previous TEXT NOT NULL UNIQUE CHECK (length(previous) = 64),
  hash TEXT NOT NULL UNIQUE CHECK (length(hash) = 64),
  PRIMARY KEY (job, sequence)) STRICT, WITHOUT ROWID;
INSERT INTO entry VALUES('019cb7a5-7d50-756d-af28-754e675f2957',1,'019cb7a5-8138-7fc2-aa0d-ae7e0ea06642','started','{"body":{"hours":"412 h","machine":"P-1","model":"Test pump","reason":"new-work","serial":"S-100","sheet_digest":"afb65dfe7effd5628a04b07abd06055dc664ea6bb84c4ae9cffffd58d05e83c6","work_order":"WO 1"},"by":[{"person":"mira"}],"entered_by":"mira","id":"019cb7a5-8138-7fc2-aa0d-ae7e0ea06642","kind":"started","seq":1,"time":"2026-03-04T08:00:04.000+01:00","v":1}','39bf16dd44405386f51360df144f49b0d718491a048068f752cc695c03e7dfec','74f918e199df9cc1d26b22fe9b14292c13f9fcdd4984da43dda4b352d06e26aa');
INSERT INTO entry VALUES('019cb7a5-7d50-756d-af28-754e675f2957',2,'019cb7a5-8908-7843-bd2b-b222c23867e7','warnings-read','{"body":{"step":"s1"},"by":[{"person":"mira"}],"entered_by":"mira","id":"019cb7a5-8908-7843-bd2b-b222c23867e7","kind":"warnings-read","seq":2,"time":"2026-03-04T08:00:06.000+01:00","v":1}','74f918e199df9cc1d26b22fe9b14292c13f9fcdd4984da43dda4b352d06e26aa','e3a8b136dd0e6e2374faac46dbeebd51092f5bd88a65f7766d87f69a7a6dda54');
INSERT INTO entry VALUES('019cb7a5-7d50-756d-af28-754e675f2957',3,'019cb7a5-90d8-7b06-97eb-65b20b1ce43c','done','{"body":{"renewed":true,"step":"s1"},"by":[{"person":"mira"}],"entered_by":"mira","id":"019cb7a5-90d8-7b06-97eb-65b20b1ce43c","kind":"done","seq":3,"time":"2026-03-04T08:00:08.000+01:00","v":1}','e3a8b136dd0e6e2374faac46dbeebd51092f5bd88a65f7766d87f69a7a6dda54','58729a320ae267bfbeca3a995f4fece3a8053e6e451797c7114bbb5da7d42c81');
INSERT INTO entry VALUES('019cb7a5-7d50-756d-af28-754e675f2957',4,'019cb7a5-98a8-7a2c-80f6-f5cbf9a6bf9f','checked','{"body":{"answer":"yes","step":"s2"},"by":[{"person":"mira"}],"entered_by":"mira","id":"019cb7a5-98a8-7a2c-80f6-f5cbf9a6bf9f","kind":"checked","seq":4,"time":"2026-03-04T08:00:10.000+01:00","v":1}','58729a320ae267bfbeca3a995f4fece3a8053e6e451797c7114bbb5da7d42c81','4a42e2079d732a575234d2c87b91a91b721213ab859b82211492ab15e624cc3c');
INSERT INTO entry VALUES('019cb7a5-7d50-756d-af28-754e675f2957',5,'019cb7a5-a078-7a73-bea7-0a8188224d0a','measured','{"body":{"step":"s3","unit":"mm","value":"0.05"},"by":[{"person":"mira"}],"entered_by":"mira","id":"019cb7a5-a078-7a73-bea7-0a8188224d0a","kind":"measured","seq":5,"time":"2026-03-04T08:00:12.000+01:00","v":1}','4a42e2079d732a575234d2c87b91a91b721213ab859b82211492ab15e624cc3c','b0f3361829292c330c732bc6d330e4d99a447241b7059d3b2b0c6d4a277888c0');
INSERT INTO entry VALUES('019cb7a5-7d50-756d-af28-754e675f2957',6,'019cb7a5-a848-7fb5-a34a-695242b2f47c','applied','{"body":{"batch":"B-77","expiry":"2026-12-31","step":"s4"},"by":[{"person":"mira"}],"entered_by":"mira","id":"019cb7a5-a848-7fb5-a34a-695242b2f47c","kind":"applied","seq":6,"time":"2026-03-04T08:00:14.000+01:00","v":1}','b0f3361829292c330c732bc6d330e4d99a447241b7059d3b2b0c6d4a277888c0','684550ae8fb2018d9228e903d6f1e735b3984aef939712c4be8c6f7539f15c2d');
CREATE TABLE mention(
  what TEXT NOT NULL CHECK (what IN ('person', 'tool')),
  name TEXT NOT NULL,
  job TEXT NOT NULL REFERENCES job(id),
  PRIMARY KEY (what, name, job)) STRICT, WITHOUT ROWID;
INSERT INTO mention VALUES('person','mira','019cb7a5-7d50-756d-af28-754e675f2957');
CREATE TABLE record(
  job TEXT NOT NULL PRIMARY KEY REFERENCES job(id),
  bytes BLOB NOT NULL,
  digest TEXT NOT NULL CHECK (length(digest) = 64),
  head TEXT NOT NULL CHECK (length(head) = 64),
  count INTEGER NOT NULL CHECK (count > 0),
  sealed TEXT NOT NULL) STRICT;
CREATE TABLE addendum(
  job TEXT NOT NULL REFERENCES record(job),
  number INTEGER NOT NULL CHECK (number > 0),
  bytes BLOB NOT NULL,
  PRIMARY KEY (job, number)) STRICT;
CREATE TABLE disposal(
  job TEXT NOT NULL PRIMARY KEY REFERENCES job(id),
  at TEXT NOT NULL,
  by TEXT NOT NULL,
  reason TEXT NOT NULL CHECK (trim(reason) <> '')) STRICT;
CREATE TABLE sign_in(
  number INTEGER PRIMARY KEY,
  sign TEXT NOT NULL,
  at TEXT NOT NULL,
  job TEXT NOT NULL,
  outcome TEXT NOT NULL CHECK (outcome IN ('accepted', 'wrong-pin', 'locked-out'))) STRICT;
INSERT INTO sign_in VALUES(1,'mira','2026-03-04T08:00:04.000+01:00','019cb7a5-7d50-756d-af28-754e675f2957','accepted');
CREATE TRIGGER shop_stays BEFORE DELETE ON shop
BEGIN SELECT RAISE(ABORT, 'the shop itself stays'); END;
CREATE TRIGGER shop_once BEFORE INSERT ON shop WHEN EXISTS (SELECT 1 FROM shop)
BEGIN SELECT RAISE(ABORT, 'a shop file holds one shop'); END;
CREATE TRIGGER shop_id_stays BEFORE UPDATE OF one, id ON shop
BEGIN SELECT RAISE(ABORT, 'every chain begins with the id of the shop; it stays'); END;
CREATE TRIGGER person_stays BEFORE DELETE ON person
BEGIN SELECT RAISE(ABORT, 'a person is made inactive, not deleted'); END;
CREATE TRIGGER tool_stays BEFORE DELETE ON tool
BEGIN SELECT RAISE(ABORT, 'a tool is retired, not deleted'); END;
CREATE INDEX tool_history_tool ON tool_history(tool, number);
CREATE UNIQUE INDEX sheet_issued_once ON sheet_revision(sheet) WHERE status = 'issued';
CREATE INDEX sheet_history_revision ON sheet_history(sheet, revision, number);
CREATE INDEX job_started ON job(started);
CREATE INDEX job_work_order ON job(work_order);
CREATE INDEX job_machine ON job(machine);
CREATE INDEX job_serial ON job(serial);
CREATE INDEX job_sheet ON job(sheet);
CREATE INDEX entry_finished ON entry(job) WHERE kind = 'finished';
CREATE INDEX mention_job ON mention(job);
CREATE INDEX sign_in_sign ON sign_in(sign, number);
CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'entries are append-only'); END;
CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry
WHEN NOT EXISTS (SELECT 1 FROM disposal WHERE job = OLD.job)
BEGIN SELECT RAISE(ABORT, 'entries are append-only; only a logged disposal removes them'); END;
CREATE TRIGGER entry_no_replace BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM entry WHERE job = NEW.job AND sequence = NEW.sequence)
  OR EXISTS (SELECT 1 FROM entry WHERE id = NEW.id)
  OR EXISTS (SELECT 1 FROM entry WHERE previous = NEW.previous)
  OR EXISTS (SELECT 1 FROM entry WHERE hash = NEW.hash)
BEGIN SELECT RAISE(ABORT, 'entries are append-only; this one would replace another'); END;
CREATE TRIGGER entry_not_after_disposal BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM disposal WHERE job = NEW.job)
BEGIN SELECT RAISE(ABORT, 'this job was disposed of'); END;
CREATE TRIGGER record_no_update BEFORE UPDATE ON record
BEGIN SELECT RAISE(ABORT, 'a sealed record is never changed'); END;
CREATE TRIGGER record_no_delete BEFORE DELETE ON record
WHEN NOT EXISTS (SELECT 1 FROM disposal WHERE job = OLD.job)
BEGIN SELECT RAISE(ABORT, 'a sealed record stays; only a logged disposal removes it'); END;
CREATE TRIGGER record_no_replace BEFORE INSERT ON record
WHEN EXISTS (SELECT 1 FROM record WHERE job = NEW.job) OR EXISTS (SELECT 1 FROM disposal WHERE job = NEW.job)
BEGIN SELECT RAISE(ABORT, 'a job is sealed once'); END;
CREATE TRIGGER addendum_no_update BEFORE UPDATE ON addendum
BEGIN SELECT RAISE(ABORT, 'an addendum is never changed'); END;
CREATE TRIGGER addendum_no_delete BEFORE DELETE ON addendum
WHEN NOT EXISTS (SELECT 1 FROM disposal WHERE job = OLD.job)
BEGIN SELECT RAISE(ABORT, 'an addendum stays; only a logged disposal removes it'); END;
CREATE TRIGGER addendum_no_replace BEFORE INSERT ON addendum
WHEN EXISTS (SELECT 1 FROM addendum WHERE job = NEW.job AND number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'an addendum is never replaced'); END;
CREATE TRIGGER job_no_update BEFORE UPDATE ON job
BEGIN SELECT RAISE(ABORT, 'how a job began is never changed'); END;
CREATE TRIGGER job_no_delete BEFORE DELETE ON job
BEGIN SELECT RAISE(ABORT, 'a job stays listed'); END;
CREATE TRIGGER job_no_replace BEFORE INSERT ON job WHEN EXISTS (SELECT 1 FROM job WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a job begins once'); END;
CREATE TRIGGER disposal_no_update BEFORE UPDATE ON disposal
BEGIN SELECT RAISE(ABORT, 'the log of disposals is append-only'); END;
CREATE TRIGGER disposal_no_delete BEFORE DELETE ON disposal
BEGIN SELECT RAISE(ABORT, 'the log of disposals is append-only'); END;
CREATE TRIGGER disposal_no_replace BEFORE INSERT ON disposal WHEN EXISTS (SELECT 1 FROM disposal WHERE job = NEW.job)
BEGIN SELECT RAISE(ABORT, 'the log of disposals is append-only'); END;
CREATE TRIGGER sign_in_no_update BEFORE UPDATE ON sign_in
BEGIN SELECT RAISE(ABORT, 'the log of sign-ins is append-only'); END;
CREATE TRIGGER sign_in_no_delete BEFORE DELETE ON sign_in
BEGIN SELECT RAISE(ABORT, 'the log of sign-ins is append-only'); END;
CREATE TRIGGER sign_in_no_replace BEFORE INSERT ON sign_in WHEN EXISTS (SELECT 1 FROM sign_in WHERE number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'the log of sign-ins is append-only'); END;
CREATE TRIGGER tool_history_no_update BEFORE UPDATE ON tool_history
BEGIN SELECT RAISE(ABORT, 'the history of tools is append-only'); END;
CREATE TRIGGER tool_history_no_delete BEFORE DELETE ON tool_history
BEGIN SELECT RAISE(ABORT, 'the history of tools is append-only'); END;
CREATE TRIGGER tool_history_no_replace BEFORE INSERT ON tool_history
WHEN EXISTS (SELECT 1 FROM tool_history WHERE number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'the history of tools is append-only'); END;
CREATE TRIGGER sheet_history_no_update BEFORE UPDATE ON sheet_history
BEGIN SELECT RAISE(ABORT, 'the history of sheets is append-only'); END;
CREATE TRIGGER sheet_history_no_delete BEFORE DELETE ON sheet_history
BEGIN SELECT RAISE(ABORT, 'the history of sheets is append-only'); END;
CREATE TRIGGER sheet_history_no_replace BEFORE INSERT ON sheet_history
WHEN EXISTS (SELECT 1 FROM sheet_history WHERE number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'the history of sheets is append-only'); END;
CREATE TRIGGER sheet_text_no_update BEFORE UPDATE ON sheet_text
BEGIN SELECT RAISE(ABORT, 'the bytes of a sheet are never changed'); END;
CREATE TRIGGER sheet_text_no_replace BEFORE INSERT ON sheet_text
WHEN EXISTS (SELECT 1 FROM sheet_text WHERE digest = NEW.digest)
BEGIN SELECT RAISE(ABORT, 'the bytes of a sheet are never replaced'); END;
CREATE TRIGGER sheet_text_no_delete BEFORE DELETE ON sheet_text
WHEN EXISTS (SELECT 1 FROM sheet_revision WHERE digest = OLD.digest)
  OR EXISTS (SELECT 1 FROM job WHERE digest = OLD.digest)
BEGIN SELECT RAISE(ABORT, 'a sheet or a job still needs these bytes'); END;
CREATE TRIGGER sheet_begins_as_draft BEFORE INSERT ON sheet_revision
WHEN NEW.status <> 'draft'
  OR EXISTS (SELECT 1 FROM sheet_revision WHERE (sheet = NEW.sheet AND revision = NEW.revision) OR digest = NEW.digest)
BEGIN SELECT RAISE(ABORT, 'a revision begins once, as a draft'); END;
CREATE TRIGGER sheet_frozen BEFORE UPDATE OF sheet, revision, digest, title, model, author ON sheet_revision
WHEN OLD.status <> 'draft' OR NEW.sheet <> OLD.sheet OR NEW.revision <> OLD.revision
BEGIN SELECT RAISE(ABORT, 'only a draft is changed; make a new revision'); END;
CREATE TRIGGER sheet_status_moves BEFORE UPDATE OF status ON sheet_revision
WHEN NEW.status <> OLD.status AND OLD.status || '>' || NEW.status NOT IN
  ('draft>in-review', 'in-review>draft', 'in-review>issued', 'issued>superseded', 'issued>withdrawn')
BEGIN SELECT RAISE(ABORT, 'a revision goes from draft to in review, issued, superseded or withdrawn'); END;
CREATE TRIGGER sheet_issue_alone BEFORE UPDATE OF status ON sheet_revision
WHEN NEW.status = 'issued' AND EXISTS
  (SELECT 1 FROM sheet_revision WHERE sheet = NEW.sheet AND revision <> NEW.revision AND status = 'issued')
BEGIN SELECT RAISE(ABORT, 'another revision of this sheet is issued; supersede it first'); END;
CREATE TRIGGER sheet_stays BEFORE DELETE ON sheet_revision WHEN OLD.status <> 'draft'
BEGIN SELECT RAISE(ABORT, 'only a draft is deleted'); END;
CREATE VIRTUAL TABLE job_words USING fts5(
  job UNINDEXED, work_order, machine, model, serial, title, tokenize = 'unicode61', prefix = '1 2 3');
INSERT INTO job_words(job, work_order, machine, model, serial, title)
SELECT id, work_order, machine, model, serial, title FROM job ORDER BY started, id;
CREATE TRIGGER job_words_follow AFTER INSERT ON job
BEGIN
  INSERT INTO job_words(job, work_order, machine, model, serial, title)
  VALUES (NEW.id, NEW.work_order, NEW.machine, NEW.model, NEW.serial, NEW.title);
END;
COMMIT;
PRAGMA application_id=1129076562;
PRAGMA user_version=2;
