-- Who changed somebody's role, shares or account; null for what was written down before.
alter table sign_in add column done_by varchar(80);
