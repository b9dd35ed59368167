/** Videos, stills taken out of them, and what people say of attachments. */
export const videos = `
create table videos (
  id text primary key,
  job_id text not null references jobs (id),
  number integer not null,
  sha256 text not null,
  stored_name text not null,
  camera_id text references cameras (id),
  file text not null,
  tags text not null,
  taken_in_at_ms integer not null,
  unique (job_id, number),
  unique (job_id, sha256)
) strict;

alter table photos add column still text;
alter table attachments add column tags text not null default '{}';
`
