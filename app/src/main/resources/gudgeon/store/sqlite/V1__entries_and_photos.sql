-- One row for each entry; the order of a job's book is (job, seq). Nothing is ever updated or deleted.
create table entry (
    job      text    not null,
    seq      bigint  not null,
    id       text    not null,
    at       text    not null,
    type     text    not null,
    document text    not null,
    primary key (job, seq)
);
create unique index entry_id on entry (id);

-- Photos by the hash of their bytes.
create table photo (
    sha256 text   not null primary key,
    type   text   not null,
    size   bigint not null,
    bytes  blob   not null
);
