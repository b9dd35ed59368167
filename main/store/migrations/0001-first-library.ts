/** Jobs, their records, photos, evidence log, undo steps, packets and the search index. */
export const firstLibrary = `
create table settings (
  name text primary key,
  value text not null
) strict;

create table jobs (
  id text primary key,
  number text not null,
  number_key text not null unique,
  folder text not null unique,
  created_at_ms integer not null,
  changed_at_ms integer not null,
  sheet text not null,
  frame text not null,
  lacks integer
) strict;

create table counters (
  job_id text not null references jobs (id),
  name text not null,
  last integer not null,
  primary key (job_id, name)
) strict, without rowid;

create table facets (
  id text primary key,
  job_id text not null references jobs (id),
  letter text not null,
  data text not null,
  unique (job_id, letter)
) strict;

create table cameras (
  id text primary key,
  job_id text not null references jobs (id),
  make text not null,
  model text not null,
  serial text not null,
  clock text not null,
  unique (job_id, make, model, serial)
) strict;

create table photos (
  id text primary key,
  job_id text not null references jobs (id),
  number integer not null,
  sha256 text not null,
  stored_name text not null,
  camera_id text references cameras (id),
  file text not null,
  tags text not null,
  preview text not null check (preview in ('ready', 'none')),
  taken_in_at_ms integer not null,
  unique (job_id, number),
  unique (job_id, sha256)
) strict;

create table attachments (
  id text primary key,
  job_id text not null references jobs (id),
  sha256 text not null,
  stored_name text not null,
  file text not null,
  type_label text not null,
  why text not null,
  taken_in_at_ms integer not null,
  unique (job_id, sha256)
) strict;

create table doubles (
  job_id text not null references jobs (id),
  sha256 text not null,
  file_name text not null,
  primary key (job_id, sha256, file_name)
) strict, without rowid;

create table findings (
  id text primary key,
  job_id text not null references jobs (id),
  number integer not null,
  data text not null,
  unique (job_id, number)
) strict;

create table readings (
  id text primary key,
  job_id text not null references jobs (id),
  number integer not null,
  data text not null,
  unique (job_id, number)
) strict;

create table log (
  job_id text not null references jobs (id),
  seq integer not null,
  at_ms integer not null,
  actor text not null,
  event text not null,
  previous text,
  hash text not null,
  primary key (job_id, seq)
) strict, without rowid;

create trigger log_is_append_only_insert before insert on log
when new.seq <> (select coalesce(max(seq), 0) + 1 from log where job_id = new.job_id) begin
  select raise(abort, 'the evidence log is append-only');
end;
create trigger log_is_append_only_update before update on log begin
  select raise(abort, 'the evidence log is append-only');
end;
create trigger log_is_append_only_delete before delete on log begin
  select raise(abort, 'the evidence log is append-only');
end;

create table steps (
  id integer primary key,
  job_id text not null references jobs (id),
  log_seq integer not null,
  summary text not null,
  changes text not null,
  undone integer not null default 0
) strict;
create index steps_by_job on steps (job_id, undone, id);

create table packets (
  id text primary key,
  job_id text not null references jobs (id),
  revision integer not null,
  issued_at_ms integer not null,
  summary text not null,
  snapshot text not null,
  unique (job_id, revision)
) strict;

create virtual table search_words using fts5 (
  words,
  job_id unindexed,
  kind unindexed,
  record_id unindexed,
  label unindexed,
  tokenize = 'unicode61 remove_diacritics 2',
  prefix = '2 3'
);
create table search_rows (
  kind text not null,
  record_id text not null,
  word_row integer not null,
  primary key (kind, record_id)
) strict, without rowid;
`
