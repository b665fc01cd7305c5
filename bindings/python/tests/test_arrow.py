"""Arrow tables in and out: every producer and consumer, the numbers of single calls, constant memory."""

import gc
import subprocess
import sys
import threading

import flamewright as fw
import numpy as np
import pytest

pa = pytest.importorskip("pyarrow")
pl = pytest.importorskip("polars")
pd = pytest.importorskip("pandas")
duckdb = pytest.importorskip("duckdb")

READINGS = {
    "appliance": ["A1", "A2", "B7", "B9", "C3"],
    "oxygen_dry": [4.6, None, 5.0, 22.5, 4.1],
    "carbon_monoxide_dry": [48.0, 20.0, 30.0, 40.0, None],
    "flue_temperature": [62.0, 60.0, float("inf"), 58.0, 140.0],
}
UNITS = {"oxygen_dry": "%", "carbon_monoxide_dry": "ppm", "flue_temperature": "degC"}
GIVEN = {"fuel": "G20", "units": UNITS, "air_temperature": "18 degC"}


def laid(table, **more):
    return fw.flue_analysis.over(table, **{**GIVEN, **more})


def expected(**more):
    return pa.table(laid(pa.table(READINGS), **more))


def test_rows_are_those_of_single_calls():
    result = expected()
    assert result.num_rows == 5
    assert result["appliance"].to_pylist() == READINGS["appliance"]
    single = fw.flue_analysis(fuel="G20", oxygen_dry="4.6 %", carbon_monoxide_dry="48 ppm", flue_temperature="62 degC", air_temperature="18 degC")
    si = expected(output_units="si")
    for name in fw.flue_analysis.output_fields:
        value = single[name]
        for column, number, unit in ((result, value.magnitude, value.units), (si, value.si, None)):
            got = column[name][0].as_py()
            assert (got == number) if not np.isnan(value.si) else got is None, name
            if unit is not None:
                assert column.field(name).metadata[b"unit"].decode() == unit
    status, reason = result["status"].to_pylist(), result["reason"].to_pylist()
    assert [s >= 0x100 for s in status] == [False, True, True, True, True]
    assert reason[0] is None
    assert reason[1].startswith("oxygen_dry: neither oxygen")
    assert reason[2].startswith("flue_temperature: not finite")
    assert reason[3].startswith("oxygen_dry: outside 0 % to 20.9 %")
    assert reason[4].startswith("carbon_monoxide_dry: missing")
    assert result["efficiency_net"].null_count == sum(s >= 0x100 for s in status)
    assert b'"version"' in result.schema.metadata[b"flamewright.flue_analysis"]


def test_every_producer_gives_the_same():
    want = expected().drop_columns(["appliance"])
    table = pa.table(READINGS)
    batch = table.to_batches()[0]
    frame = pl.DataFrame(READINGS)
    database = duckdb.connect()
    database.register("readings", table)
    producers = {
        "pyarrow table": table,
        "pyarrow batch": batch,
        "pyarrow struct array": table.to_struct_array().combine_chunks(),
        "pyarrow reader": table.to_reader(max_chunksize=2),
        "chunked table": pa.concat_tables([table.slice(0, 1), table.slice(1, 0), table.slice(1, 4)]),
        "sliced table": pa.concat_tables([table, table, table]).combine_chunks().slice(5, 5),
        "list of batches": [batch.slice(0, 3), batch.slice(3)],
        "generator of frames": (frame.slice(at, 2) for at in (0, 2, 4)),
        "polars": frame,
        "polars lazy": frame.lazy(),
        "pandas": pd.DataFrame(READINGS).convert_dtypes(dtype_backend="pyarrow"),
        "duckdb": database.sql("select * from readings"),
    }
    for name, producer in producers.items():
        got = pa.table(laid(producer)).drop_columns(["appliance"])
        for column in want.column_names:
            assert got[column].to_pylist() == want[column].to_pylist(), (name, column)
    # pyarrow and Polars write a text column each in a type of its own.
    with pytest.raises(Exception, match="other columns"):
        pa.table(laid(part for part in (table, frame)))


def test_every_consumer_reads_it():
    want = expected()["efficiency_net"].to_pylist()
    assert pa.RecordBatchReader.from_stream(laid(pa.table(READINGS))).read_all()["efficiency_net"].to_pylist() == want
    polars = pl.DataFrame(laid(pl.DataFrame(READINGS)))
    assert polars["efficiency_net"].to_list() == want
    assert polars["reason"][1].startswith("oxygen_dry: neither oxygen")
    pandas = pd.DataFrame.from_arrow(laid(pd.DataFrame(READINGS)))
    assert [None if np.isnan(v) else v for v in pandas["efficiency_net"]] == want
    result = laid(pa.table(READINGS))
    rows = duckdb.connect().execute("select appliance, reason from result where status >= 256 order by appliance").fetchall()
    assert [row[0] for row in rows][:3] == ["A2", "B7", "B9"], result


def test_a_pandas_column_of_missing_numbers_is_null():
    frame = pd.DataFrame({"temperature": [60.0, np.nan]})
    result = pa.table(fw.liquid_water.over(frame, units={"temperature": "degC"}))
    assert result["density"].null_count == 1
    assert result["reason"][1].as_py().startswith("temperature: missing")


def test_one_calculation_follows_another_with_units_and_bases():
    flue = laid(pa.table(READINGS), outputs=["efficiency_gross", "efficiency_net"])
    table = pa.table(flue)
    assert table.field("efficiency_net").metadata[b"basis"] == b"net"
    assert table.field("oxygen_dry").metadata[b"unit"] == b"%"
    again = fw.flue_analysis.over(table, fuel="G20", air_temperature="18 degC", outputs=["efficiency_net"], prefix="again_")
    again = pa.table(again)
    assert again["again_efficiency_net"].to_pylist() == table["efficiency_net"].to_pylist()
    assert {b"flamewright.flue_analysis", b"flamewright.again_flue_analysis"} <= set(again.schema.metadata)


def test_what_is_wrong_with_the_table_is_told_before_any_work():
    table = pa.table(READINGS)

    def untouched():
        yield table.to_batches()[0].slice(0, 1)
        raise AssertionError("work was begun")

    def refusal(**more):
        with pytest.raises(fw.Error) as caught:
            laid(untouched(), **more)
        return caught.value

    assert refusal(units={**UNITS, "flue_temperature": "mbar"}).kind == "wrong_dimension"
    assert refusal(units={**UNITS, "flue_temperature": "degX"}).kind == "unknown_unit"
    assert refusal(units={"oxygen_dry": "%"}).kind == "unit_missing"
    assert "did you mean" in str(refusal(units={**UNITS, "oxygen": "%"}))
    assert "numbers" in str(refusal(columns={"oxygen_dry": "appliance"}))
    assert refusal(outputs=["efficiency"]).kind == "unknown_name"
    assert refusal(oxygen_dry="4 %").field == "oxygen_dry"
    with pytest.raises(fw.Error, match="one value for every row"):
        laid(table, air_temperature=([18.0, 19.0], "degC"))
    with pytest.raises(fw.Error, match="unit"):
        laid(table, air_temperature=18)
    for wrong in (5, "readings.parquet", {"oxygen_dry": [1.0]}, [], None):
        with pytest.raises((TypeError, ValueError), match="table|batch|Arrow"):
            laid(wrong)


def test_it_is_read_once():
    result = laid(pa.table(READINGS))
    assert "efficiency_net [%]" in repr(result)
    assert "status" in result.column_names
    assert pa.schema(result).field("efficiency_net").metadata[b"unit"] == b"%"
    pa.table(result)
    with pytest.raises(RuntimeError, match="read already"):
        pa.table(result)


def test_a_fault_of_the_source_reaches_the_reader():
    def faulty():
        yield pa.table(READINGS)
        raise OSError("the disc is gone")

    reader = pa.RecordBatchReader.from_stream(laid(faulty()))
    assert reader.read_next_batch().num_rows == 5
    with pytest.raises(Exception, match="the disc is gone"):
        reader.read_next_batch()


def test_the_columns_read_lie_where_they_lay():
    table = pa.table({"temperature": pa.array(np.linspace(290.0, 350.0, 1000))})
    result = pa.table(fw.liquid_water.over(table, units="si"))
    assert result["temperature"].chunk(0).buffers()[1].address == table["temperature"].chunk(0).buffers()[1].address
    del table
    gc.collect()
    assert result["temperature"][999].as_py() == 350.0


def test_eight_threads_read_identical_bytes():
    draw = np.random.default_rng(5)
    table = pa.table(
        {
            "oxygen_dry": draw.uniform(0.0, 0.22, 100_000),
            "carbon_monoxide_dry": draw.uniform(0, 1e-3, 100_000),
            "flue_temperature": draw.uniform(280, 500, 100_000),
        }
    )
    results = [None] * 8

    def work(i):
        results[i] = pa.table(fw.flue_analysis.over(table, fuel="G20", air_temperature="18 degC", units="si")).combine_chunks()

    threads = [threading.Thread(target=work, args=(i,)) for i in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    sinks = [pa.BufferOutputStream() for _ in results]
    for sink, result in zip(sinks, results, strict=True):
        with pa.ipc.new_stream(sink, result.schema) as writer:
            writer.write_table(result)
    assert len({sink.getvalue().to_pybytes() for sink in sinks}) == 1


def test_a_reader_is_worked_through_in_constant_memory():
    script = """
import resource, sys
import flamewright as fw, numpy as np, pyarrow as pa
schema = pa.schema([("temperature", pa.float64())])
def batches(count):
    values = pa.array(np.linspace(290.0, 350.0, 100_000))
    for i in range(count):
        yield pa.record_batch([values], schema=schema)
def run(count):
    source = pa.RecordBatchReader.from_batches(schema, batches(count))
    rows = 0
    for batch in pa.RecordBatchReader.from_stream(fw.liquid_water.over(source, units="si")):
        rows += batch.num_rows
    assert rows == count * 100_000, rows
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
few = run(5)
print(run(40) - few)
"""
    grown = int(subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True).stdout)
    # Four million rows of seven results would be 220 MB at once; a batch is 6 MB.
    assert grown < 60_000 * (1 if sys.platform != "darwin" else 1024), grown


def test_the_import_does_not_bring_arrow_libraries():
    check = "import sys, flamewright; print([m for m in ('pyarrow', 'polars', 'pandas', 'duckdb') if m in sys.modules])"
    assert subprocess.run([sys.executable, "-c", check], capture_output=True, text=True, check=True).stdout.strip() == "[]"
