CREATE TABLE thing (
    id      VARCHAR(36)  NOT NULL PRIMARY KEY,
    kind    VARCHAR(8)   NOT NULL,
    name    TEXT         NOT NULL,
    folded  TEXT         NOT NULL,
    now     BIGINT       NOT NULL,
    place   INTEGER      NOT NULL,
    origin  VARCHAR(36)  NOT NULL,
    wearer  VARCHAR(36)  NOT NULL,
    fabric  VARCHAR(36)  NOT NULL,
    boot    VARCHAR(36)  NOT NULL,
    style   VARCHAR(36)  NOT NULL,
    changed BIGINT       NOT NULL
);
CREATE UNIQUE INDEX thing_name ON thing (kind, folded) WHERE place = 0 AND kind <> 'note';
CREATE INDEX thing_origin ON thing (origin);
CREATE INDEX thing_wearer ON thing (wearer);
CREATE INDEX thing_changed ON thing (kind, place, changed DESC, id);
CREATE INDEX thing_newest ON thing (changed);

CREATE TABLE version (
    thing   VARCHAR(36)  NOT NULL REFERENCES thing (id),
    number  BIGINT       NOT NULL,
    name    TEXT         NOT NULL,
    text    TEXT         NOT NULL,
    origin  VARCHAR(36)  NOT NULL,
    wearer  VARCHAR(36)  NOT NULL,
    fabric  VARCHAR(36)  NOT NULL,
    boot    VARCHAR(36)  NOT NULL,
    style   VARCHAR(36)  NOT NULL,
    figures TEXT,
    program VARCHAR(40)  NOT NULL,
    at      BIGINT       NOT NULL,
    seal    BIGINT       NOT NULL,
    PRIMARY KEY (thing, number)
);

CREATE TABLE step (
    number  BIGINT       NOT NULL PRIMARY KEY,
    at      BIGINT       NOT NULL,
    what    VARCHAR(20)  NOT NULL,
    about   TEXT         NOT NULL,
    state   INTEGER      NOT NULL
);
CREATE INDEX step_state ON step (state, number);

CREATE TABLE change (
    step    BIGINT       NOT NULL REFERENCES step (number),
    part    INTEGER      NOT NULL,
    thing   VARCHAR(36)  NOT NULL REFERENCES thing (id),
    was     BIGINT       NOT NULL,
    now     BIGINT       NOT NULL,
    was_at  INTEGER      NOT NULL,
    now_at  INTEGER      NOT NULL,
    PRIMARY KEY (step, part)
);
CREATE INDEX change_thing ON change (thing);
