-- What a machine weighs, in grams; nothing where nobody has said.

ALTER TABLE machines ADD COLUMN weight_g bigint;
