namespace Loadmark.Files.Tests;

/// <summary>What is refused, where, and in which words.</summary>
public sealed class RefusalTests
{
    [Theory]
    // The file as a whole.
    [InlineData("", 1, 1, "the file is empty")]
    [InlineData("# only a comment\n", 1, 1, "the file is empty")]
    [InlineData("---\n", 1, 1, "the file is empty")]
    [InlineData("just words", 1, 1, "found a text")]
    [InlineData("- a\n- b", 1, 1, "found a list")]
    [InlineData("loads: {}", 1, 1, "needs the key 'rig'")]
    [InlineData("rig: ''", 1, 6, "it is empty")]
    [InlineData("rig: a\n---\nrig: b", 2, 1, "one file holds one rig")]
    [InlineData("rig: &x a", 1, 6, "anchors (&x) are not allowed")]
    [InlineData("rig: a\nmains: *x", 2, 8, "aliases (*x) are not allowed")]
    [InlineData("rig: !!str a", 1, 6, "are not allowed")]
    [InlineData("rig: a\nrig: b", 2, 1, "the first is at line 1, column 1")]
    [InlineData("rig: a\n? [b]\n: c", 2, 3, "a key must be a word")]
    [InlineData("rig: a\0b", 1, 7, "not a text file")]
    [InlineData("rig: a\u0001b", 1, 7, "U+0001")]
    [InlineData("rig: a\u2028b", 1, 7, "U+2028")]
    // The grammar of YAML.
    [InlineData("rig: a\nloads:\n\tx: {}", 3, 1, "a tab")]
    [InlineData("rig: a: b", 1, 7, "a colon")]
    [InlineData("rig: a\n  mains: 230 V", 2, 8, "a colon")]
    [InlineData("rig: \"a\nmains: b", 1, 6, "a quotation mark is not closed")]
    [InlineData("rig: @a", 1, 6, "cannot begin a text")]
    [InlineData("{rig: a mains: b}", 1, 14, "a comma is missing")]
    [InlineData("rig: a\nsignal: [x, y", 2, 14, "is not closed")]
    [InlineData("rig: a\nloads:\n    x: {}\n  y: {}", 4, 3, "indented differently")]
    [InlineData("rig: \"\\q\"", 1, 6, "a backslash")]
    // Keys and words.
    [InlineData("rig: a\nload: {}", 2, 1, "did you mean 'loads'?")]
    [InlineData("rig: a\nzzzzzz: 1", 2, 1, "its keys are rig, mains, headroom, loads")]
    [InlineData("rig: a\nsupplies: { b: { isolatd: yes, outlets: { 1: } } }", 2, 18, "'isolatd' is not a key of a supply; did you mean 'isolated'?")]
    [InlineData("rig: a\nloads: { x: { lable: 9V } }", 2, 15, "did you mean 'label'?")]
    [InlineData("rig: a\nleads: { x: { typ: straight } }", 2, 15, "'typ' is not a key of a lead; did you mean 'type'?")]
    [InlineData("rig: a\nleads: { x: { type: dasy chain } }", 2, 21, "did you mean 'daisy chain'?")]
    [InlineData("rig: a\nloads: { x: { polarity: centre negtive } }", 2, 25, "did you mean 'centre negative'?")]
    [InlineData("rig: a\nloads: { x: { ground: postive } }", 2, 23, "did you mean 'positive'?")]
    [InlineData("rig: a\nloads: { x: { draws: pwoer } }", 2, 22, "did you mean 'power'?")]
    [InlineData("rig: a\nsupplies: { b: { overload: hicup, outlets: { 1: } } }", 2, 28, "did you mean 'hiccup'?")]
    [InlineData("rig: a\nsupplies: { b: { overload: shrug, outlets: { 1: } } }", 2, 28, "one of current limit, foldback, hiccup, fuse")]
    [InlineData("rig: a\nloads: { x: { isolate: maybe } }", 2, 24, "expected yes or no, found \"maybe\"")]
    [InlineData("rig: a\nloads: { x: [9 V] }", 2, 13, "expected its label, or the keys of a load, found a list")]
    [InlineData("rig: a\nloads: [x]", 2, 8, "found a list")]
    [InlineData("rig: a\nsignal: amp", 2, 9, "expected a list of tags")]
    [InlineData("rig: a\nsignal: [[x]]", 2, 10, "found a list")]
    [InlineData("rig: a\nsignal: ['']", 2, 10, "it is empty")]
    [InlineData("rig: [a]", 1, 6, "expected a text, found a list")]
    // Figures.
    [InlineData("rig: a\nloads: { x: { run: 300 } }", 2, 20, "expected a current such as 300 mA, found \"300\"; the unit is missing (A)")]
    [InlineData("rig: a\nloads: { x: { run: -3 mA } }", 2, 20, "below zero")]
    [InlineData("rig: a\nloads: { x: { run: .nan } }", 2, 20, "does not start with a number")]
    [InlineData("rig: a\nloads: { x: { run: .inf A } }", 2, 20, "does not start with a number")]
    [InlineData("rig: a\nloads: { x: { run: 1e300 A } }", 2, 20, "numbers with an exponent are not read")]
    [InlineData("rig: a\nloads: { x: { current: 9999999 A } }", 2, 24, "more than anything on a pedalboard has")]
    [InlineData("rig: a\nloads: { x: { watts: 3 A } }", 2, 22, "expected a power")]
    [InlineData("rig: a\nloads: { x: { run: \"1,000 mA\" } }", 2, 20, "the comma may mean")]
    [InlineData("rig: a\nloads: { x: { run: [1 A] } }", 2, 20, "found a list")]
    [InlineData("rig: a\nloads: { x: { voltage: 0 V } }", 2, 24, "must be more than zero")]
    [InlineData("rig: a\nloads: { x: { voltage: 9 } }", 2, 24, "the unit is missing (V)")]
    [InlineData("rig: a\nloads: { x: { voltage: -9 V } }", 2, 24, "below zero")]
    [InlineData("rig: a\nloads: { x: { voltage: NaN V } }", 2, 24, "there is no number in it")]
    [InlineData("rig: a\nloads: { x: { voltage: 99999999 V } }", 2, 24, "more than anything on a pedalboard has")]
    [InlineData("rig: a\nloads: { x: { starts_below: 0 V } }", 2, 29, "must be more than zero")]
    [InlineData("rig: a\nloads: { x: { start: 1 A for ever } }", 2, 22, "such as 520 mA for 1.5 s")]
    [InlineData("rig: a\nloads: { x: { start: 1 A for 0 s } }", 2, 22, "must be more than zero")]
    [InlineData("rig: a\nloads: { x: { start: 1000 A for 1000 s } }", 2, 22, "it is more than anything on a pedalboard has (at most 600 s)")]
    [InlineData("rig: a\nloads: { x: { start: 1 A for 1 s 2 s } }", 2, 22, "more than two figures")]
    [InlineData("rig: a\nloads: { x: { input_capacitance: 3 V } }", 2, 34, "a capacitance such as 100 µF")]
    [InlineData("rig: a\nloads: { x: { priority: 4 } }", 2, 25, "a whole number from 1 to 3")]
    [InlineData("rig: a\nloads: { x: { kind: '' } }", 2, 21, "it is empty")]
    [InlineData("rig: a\nheadroom: 10", 2, 11, "did you mean '10 %'?")]
    [InlineData("rig: a\nheadroom: 100 %", 2, 11, "must be below 100 %")]
    [InlineData("rig: a\nheadroom: -5 %", 2, 11, "expected a share such as 10 %")]
    [InlineData("rig: a\nheadroom: .nan", 2, 11, "expected a share such as 10 %")]
    [InlineData("rig: a\nmains: 230", 2, 8, "the unit is missing (V)")]
    [InlineData("rig: a\nmains: 0 V", 2, 8, "must be more than zero")]
    [InlineData("rig: a\nmains: 230 V 50 V", 2, 8, "is not a unit that fits here (Hz)")]
    [InlineData("rig: a\nsupplies: { b: { total: 18, outlets: { 1: } } }", 2, 25, "amps, watts or both")]
    [InlineData("rig: a\nsupplies: { b: { total: 2 A 3 A, outlets: { 1: } } }", 2, 25, "a figure stands twice")]
    [InlineData("rig: a\nsupplies: { b: { total: 0 W, outlets: { 1: } } }", 2, 25, "must be more than zero")]
    [InlineData("rig: a\nleads: { x: { wire: 0.22 } }", 2, 21, "0.22 mm² or AWG 24")]
    [InlineData("rig: a\nleads: { x: { wire: AWG 99 } }", 2, 21, "gauges go from 10 to 40")]
    [InlineData("rig: a\nleads: { x: { wire: 0 mm² } }", 2, 21, "must be more than zero")]
    [InlineData("rig: a\nleads: { x: { plugs: 0 } }", 2, 22, "from 1 to 1000")]
    [InlineData("rig: a\nleads: { x: { count: 1.5 } }", 2, 22, "from 1 to 1000")]
    [InlineData("rig: a\nleads: { x: { length: 5 } }", 2, 23, "a length such as 0.5 m")]
    // Ids, outlets, banks.
    [InlineData("rig: a\nloads:\n  x: {}\n  x: {}", 4, 3, "the first is at line 3, column 3")]
    [InlineData("rig: a\nloads: { '': {} }", 2, 10, "it is empty")]
    [InlineData("rig: a\nloads: { \" x\": {} }", 2, 10, "begins or ends with a space")]
    [InlineData("rig: a\nloads: { \"x\\ny\": {} }", 2, 10, "a control character")]
    [InlineData("rig: a\nloads: { xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx: {} }", 2, 10, "longer than 64")]
    [InlineData("rig: a\nsupplies: { b/c: { outlets: { 1: } } }", 2, 13, "it holds a '/'")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1/2: } } }", 2, 29, "it holds a '/'")]
    [InlineData("rig: a\nsupplies: { b: {} }", 2, 16, "needs the key 'outlets'")]
    [InlineData("rig: a\nsupplies: { b: { outlets: {} } }", 2, 27, "at least one outlet")]
    [InlineData("rig: a\nsupplies: { b: { outlets: 9 V } }", 2, 27, "outlet ids with their labels")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 4-1: 9 V } } }", 2, 29, "it runs backwards")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1-1001: 9 V } } }", 2, 29, "more than 1000 outlets")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1-99999999999: 9 V } } }", 2, 29, "too large")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1-4: 9 V, 3: 9 V } } }", 2, 39, "outlet '3' stands here a second time; the first is at line 2, column 29")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1: { bank: left } }, banks: { lft: 1 A } } }", 2, 59, "did you mean 'left'?")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1: { bank: left } }, banks: { left: {} } } }", 2, 65, "needs the key 'total'")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1: [9 V] } } }", 2, 32, "expected its label, or the keys of an outlet")]
    public void Refuses_with_the_place_and_the_reason(string text, int line, int column, string part)
    {
        var reading = RigFileReader.Read(text, "pit.rig.yaml");
        Assert.Null(reading.Rig);
        var error = reading.Errors.FirstOrDefault(error => error.Message.Contains(part, StringComparison.Ordinal));
        Assert.True(error is not null, $"no error holds \"{part}\":\n{string.Join('\n', reading.Errors)}");
        Assert.Equal((line, column), (error.Line, error.Column));
        Assert.StartsWith($"pit.rig.yaml:{line}:{column}: ", error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ from: b/1, to: drive-3 }", 11, "there is no supply 'b'")]
    [InlineData("{ from: wal/1, to: drive-3 }", 11, "there is no supply 'wal'; did you mean 'wall/1'?")]
    [InlineData("{ from: a, to: drive-3 }", 11, "which outlet of a? It has a/1, a/2, a/3")]
    [InlineData("{ from: a/9, to: drive-3 }", 11, "a has no outlet '9'; it has a/1, a/2, a/3")]
    [InlineData("{ from: [], to: drive-3 }", 11, "found an empty list")]
    [InlineData("{ from: a/1, to: [] }", 20, "found an empty list")]
    [InlineData("{ to: drive-3 }", 3, "needs the key 'from'")]
    [InlineData("{ from: a/1 }", 3, "needs the key 'to'")]
    [InlineData("{ from: a/1, to: drive3 }", 20, "there is no load 'drive3'; did you mean 'drive-3'?")]
    [InlineData("{ from: a/1, to: amplifier }", 20, "there is no load 'amplifier'")]
    [InlineData("{ from: a/1, to: [drive-3, drive-3] }", 30, "drive-3 stands twice")]
    [InlineData("{ from: [a/1, a/1], joined: series, to: drive-3 }", 17, "a/1 stands twice")]
    [InlineData("{ from: [a/1, a/2], to: drive-3 }", 3, "needs 'joined: series' or 'joined: parallel'")]
    [InlineData("{ from: a/1, joined: series, to: drive-3 }", 24, "nothing to join")]
    [InlineData("{ from: [a/1, a/2], joined: sries, to: drive-3 }", 31, "did you mean 'series'?")]
    [InlineData("{ from: a/1, at: 0 V, to: drive-3 }", 20, "must be more than zero")]
    [InlineData("{ from: a/1, at: 9, to: drive-3 }", 20, "expected a voltage such as 9 V")]
    [InlineData("{ from: a/1, at: [9 V, 9 V], to: drive-3 }", 20, "2 voltages for 1 outlet")]
    [InlineData("{ from: a/1, lead: reversing, to: drive-3 }", 22, "list it with 'type: reversing'")]
    [InlineData("{ from: a/1, lead: flp, to: drive-3 }", 22, "did you mean 'flip'?")]
    [InlineData("{ from: a/1, pinned: perhaps, to: drive-3 }", 24, "expected yes or no")]
    [InlineData("{ form: a/1, to: drive-3 }", 5, "'form' is not a key of a feed; did you mean 'from'?")]
    [InlineData("a/1", 3, "expected the keys of a feed, found a text")]
    public void Refuses_wiring_of_what_is_not_there(string feed, int column, string part)
    {
        var reading = RigFileReader.Read(Fixtures.Small($"leads: {{ flip: {{ type: reversing }} }}\nwired:\n- {feed}"), "f");
        Assert.Null(reading.Rig);
        var error = reading.Errors.FirstOrDefault(error => error.Message.Contains(part, StringComparison.Ordinal));
        Assert.True(error is not null, $"no error holds \"{part}\":\n{string.Join('\n', reading.Errors)}");
        Assert.Equal((6, column), (error.Line, error.Column));
    }

    [Fact]
    public void Refuses_half_a_character()
    {
        var error = Assert.Single(RigFileReader.Read("rig: a\ud83d", "f").Errors);
        Assert.Equal((1, 7), (error.Line, error.Column));
        Assert.Contains("U+D83D", error.Message, StringComparison.Ordinal);
        Assert.Contains("half a character", Assert.Single(RigFileReader.Read("rig: \"\\ud83d\"", "f").Errors).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Carries_what_was_found_and_expected_and_the_nearest_word()
    {
        var error = Assert.Single(RigFileReader.Read("rig: a\nloads: { x: { isolat: yes } }", "f").Errors);
        Assert.Equal(("isolat", "a key of a load", "isolate"), (error.Found, error.Expected, error.Suggestion));
        error = Assert.Single(RigFileReader.Read("rig: a\nloads: { x: { run: 300 } }", "f").Errors);
        Assert.Equal(("300", "a current such as 300 mA", null), (error.Found, error.Expected, error.Suggestion));
    }

    [Fact]
    public void Tells_all_errors_from_the_top_down()
    {
        var errors = RigFileReader.Read("rig: a\nheadroom: 10\nloads: { x: { run: 3 } }\nsupplies: { b: {} }\nwired: [{ from: c/1, to: y }]", "f").Errors;
        Assert.Equal([2, 3, 4, 5, 5], errors.Select(error => error.Line));
    }

    [Fact]
    public void Refuses_small_files_that_stand_for_a_million_outlets()
    {
        var text = "rig: a\nsupplies:\n" + string.Concat(Enumerable.Range(0, 1_000).Select(i => $"  s{i}: {{ outlets: {{ 1-1000: 9 V }} }}\n"));
        var reading = RigFileReader.Read(text, "f");
        Assert.Equal(23, reading.Errors[0].Line);
        Assert.Contains("more than 20000", reading.Errors[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Tells_fifty_errors_and_counts_the_rest()
    {
        var text = "rig: a\nloads:\n" + string.Concat(Enumerable.Range(0, 200).Select(i => $"  x{i}: {{ run: 3 }}\n"));
        var errors = RigFileReader.Read(text, "f").Errors;
        Assert.Equal(RigFileReader.MostErrors + 1, errors.Length);
        Assert.StartsWith("and 150 more", errors[^1].Message, StringComparison.Ordinal);
    }
}
