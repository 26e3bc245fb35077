CREATE TABLE job (
    id      VARCHAR(36)  NOT NULL PRIMARY KEY,
    number  BIGINT       NOT NULL UNIQUE,
    kind    VARCHAR(8)   NOT NULL,
    name    TEXT         NOT NULL,
    input   TEXT         NOT NULL,
    state   VARCHAR(10)  NOT NULL,
    reached BIGINT       NOT NULL,
    asked   BIGINT       NOT NULL,
    tries   INTEGER      NOT NULL,
    told    TEXT         NOT NULL,
    added   BIGINT       NOT NULL,
    begun   BIGINT       NOT NULL,
    ended   BIGINT       NOT NULL
);
CREATE INDEX job_state ON job (state, number);

CREATE TABLE job_file (
    job     VARCHAR(36)  NOT NULL REFERENCES job (id),
    part    INTEGER      NOT NULL,
    name    TEXT         NOT NULL,
    kind    TEXT         NOT NULL,
    pages   INTEGER      NOT NULL,
    bytes   BYTEA        NOT NULL,
    PRIMARY KEY (job, part)
);

CREATE TABLE job_about (
    job     VARCHAR(36)  NOT NULL REFERENCES job (id),
    thing   VARCHAR(36)  NOT NULL,
    PRIMARY KEY (job, thing)
);
CREATE INDEX job_about_thing ON job_about (thing);

-- read and written by db-scheduler; times are milliseconds since 1970
CREATE TABLE job_queue (
    task_name            VARCHAR(40)  NOT NULL,
    task_instance        VARCHAR(40)  NOT NULL,
    task_data            BYTEA,
    execution_time       BIGINT       NOT NULL,
    picked               BOOLEAN      NOT NULL,
    picked_by            VARCHAR(50),
    last_success         BIGINT,
    last_failure         BIGINT,
    consecutive_failures INTEGER,
    last_heartbeat       BIGINT,
    version              BIGINT       NOT NULL,
    PRIMARY KEY (task_name, task_instance)
);
CREATE INDEX job_queue_due ON job_queue (picked, execution_time);
CREATE INDEX job_queue_heartbeat ON job_queue (last_heartbeat);
