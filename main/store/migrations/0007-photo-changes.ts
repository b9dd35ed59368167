/**
 * A job's revision, and for each photo the revision at which it last changed, kept by the database itself so that no
 * writer can forget it; and how bright a picture is, measured where its clock has to be checked. What jobs lack is counted
 * anew, since more is looked for.
 */
export const photoChanges = `
alter table jobs add column revision integer not null default 0;
alter table photos add column changed_in integer not null default 0;
alter table photos add column brightness real;

create index photos_by_change on photos (job_id, changed_in);
create index photos_by_stored_name on photos (job_id, stored_name);
update jobs set lacks = null;

create trigger log_has_grown after insert on log begin
  update jobs set revision = revision + 1 where id = new.job_id;
end;
create trigger photo_is_added after insert on photos begin
  update jobs set revision = revision + 1 where id = new.job_id;
  update photos set changed_in = (select revision from jobs where id = new.job_id) where id = new.id;
end;
create trigger photo_is_changed
after update of number, stored_name, camera_id, file, tags, preview, brightness, taken_in_at_ms on photos begin
  update jobs set revision = revision + 1 where id = new.job_id;
  update photos set changed_in = (select revision from jobs where id = new.job_id) where id = new.id;
end;
`
