using System.Collections.Immutable;
using CsCheck;
using Loadmark.Core.Acceptance;
using Loadmark.Core.Readings;
using Loadmark.Files;
using Loadmark.Files.Readings;
using Loadmark.Workshop.Accepting;

namespace Loadmark.Workshop.Tests.Accepting;

/// <summary>Whether a finished rig was built as drawn.</summary>
public sealed class AcceptanceJudgeTests
{
    private static readonly AcceptancePlan Pit = PlanOf(File.ReadAllText(Repository.PathOf("examples/pit.rig.yaml")));
    private static readonly string Measured = File.ReadAllText(Repository.PathOf("examples/pit.readings.csv"));

    [Fact]
    public void The_readings_of_the_example_prove_it()
    {
        var result = Judge(Pit, Measured);
        Assert.Equal(AcceptanceVerdict.Accepted, result.Verdict);
        Assert.Empty(result.Because);
        Assert.Null(result.Next);
        Assert.Equal(7, result.MayBePluggedIn.Count);
    }

    /// <summary>What could harm comes first: the lead that exchanges contacts and the outlets with a switch, all of them before anything is plugged in.</summary>
    [Fact]
    public void Harm_is_excluded_first()
    {
        var measures = Judge(Pit, "").Measures;
        Assert.Equal(["fuzz-1", "delay-2", "preamp-1"], measures.Items.Take(3).Select(static one => one.Point.Plug.Load.Id));
        Assert.Equal(
            measures.Items.OrderBy(static one => one.Measure).Select(static one => one.Measure), measures.Items.Select(static one => one.Measure));
        Assert.Equal("fuzz-1", Judge(Pit, "").Next!.Point.Plug.Load.Id);
    }

    [Theory]
    [InlineData("-9.04 V", "9.04 V", "The reading does not tell, open: delay-2.")]
    [InlineData("volts accuracy: 0.5 % + 2 digits", "", "How far the meter may be off")]
    [InlineData("brick/3 plug 1,tuner-1,-9.05 V,-9.04 V,", "", "Not measured yet, open: tuner-1.")]
    [InlineData("tuner-1,-9.05 V,-9.04 V,", "tuner-1,-9.05 V,,", "Not measured yet, loaded: tuner-1.")]
    [InlineData("-9.05 V,-9.04 V,\nbrick/1 plug 2", "-9.44 V,-9.04 V,\nbrick/1 plug 2", "nearer to the limit")]
    [InlineData("rig: e69aa655", "rig: 00000000", "measure what was changed anew")]
    public void What_is_not_known_proves_nothing(string was, string becomes, string because)
    {
        var result = Judge(Pit, Measured.Replace(was, becomes, StringComparison.Ordinal));
        Assert.Equal(AcceptanceVerdict.Open, result.Verdict);
        Assert.Contains(because, Said(result), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fuzz-1,+9.06", "fuzz-1,-9.06", "Reversed: centre negative where centre positive is drawn.")]
    [InlineData("preamp-1,-12.07", "preamp-1,-9.06", "The switch of brick/6 stands at 9 V.")]
    [InlineData("tuner-1,-9.05", "tuner-1,-12.05", "It would damage the load. Lead 3 is likely to be in the wrong outlet.")]
    [InlineData("tuner-1,-9.05", "tuner-1,-0.03", "Nothing arrives: brick/3 is off")]
    [InlineData("tuner-1,-9.05", "tuner-1,-13.9", "It is not regulated, or not the supply of the drawing.")]
    [InlineData("chorus-1,-9.05", "chorus-1,-12.05", "Another plug of lead 1 was found right")]
    [InlineData("-9.04 V,-8.97 V,208 mA", "-9.04 V,-7.45 V,208 mA", "about 5 Ω at 208 mA")]
    [InlineData("-9.03 V,38 mA", "-9.03 V,61 mA", "chorus-1 draws 16 mA more than the 45 mA")]
    public void A_failure_says_what_it_means(string was, string becomes, string means)
    {
        var result = Judge(Pit, Measured.Replace(was, becomes, StringComparison.Ordinal));
        Assert.Equal(AcceptanceVerdict.Refused, result.Verdict);
        Assert.Contains(means, result.Because[0], StringComparison.Ordinal);
        Assert.All(result.Measures.Items.Where(static one => one.Judged == Conformity.Fail), static one => Assert.NotEmpty(one.Next));
    }

    /// <summary>A load that is measured as next to nothing was not on; that is no proof of anything.</summary>
    [Fact]
    public void A_draw_of_nothing_is_no_draw() =>
        Assert.Contains("not on", Said(Judge(Pit, Measured.Replace("341 mA", "2 mA", StringComparison.Ordinal))), StringComparison.Ordinal);

    /// <summary>A drawing that harms is not accepted by readings that agree with it, and nothing of it may be plugged in.</summary>
    [Fact]
    public void A_drawing_that_does_not_hold_is_not_accepted()
    {
        var plan = PlanOf(Repository18);
        var result = Judge(plan, "volts accuracy: 0.1 %\ndrive-1: -18.00 open, -18.00 loaded");
        Assert.NotEqual(AcceptanceVerdict.Accepted, result.Verdict);
        Assert.Contains("The drawing itself does not hold", Said(result), StringComparison.Ordinal);
        Assert.Empty(result.MayBePluggedIn);
        Assert.Contains("It would damage the load.", Said(result), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("supplies: { brick: { label: \"OUTPUT 9V 1A\" } }", "thing-1: 9V DC 100mA", "-9.00", AcceptanceVerdict.Open)]
    [InlineData("supplies: { brick: { label: \"INPUT 100-240V~ 50/60Hz OUTPUT 9V DC 1A centre negative\" } }", "thing-1: 9V DC centre negative", "-9.00", AcceptanceVerdict.Open)]
    public void What_the_drawing_does_not_tell_is_not_passed(string supplies, string load, string read, AcceptanceVerdict verdict)
    {
        var plan = PlanOf($"rig: r\nmains: 230 V 50 Hz\nloads:\n  {load}\n{supplies}\nwired:\n  - {{ from: brick/1, to: [thing-1] }}\n");
        var result = Judge(plan, $"volts accuracy: 0.1 %\nthing-1: {read} open, {read} loaded");
        Assert.Equal(verdict, result.Verdict);
        Assert.NotEmpty(result.Because);
    }

    /// <summary>
    /// The one yes of it, held against the meter's band counted by hand: whatever was read and however good the meter, where it says accepted,
    /// each true value that the meter allows lies within what the circuit has, the right way round.
    /// </summary>
    [Fact]
    public void It_is_never_accepted_where_the_meter_allows_another_value() =>
        Gen.Select(Gen.Decimal[8.4m, 9.6m].Array[14], Gen.Decimal[0, 0.02m], Gen.Int[0, 30], Gen.Int[0, 40]).Sample(
            static (volts, share, digits, flaw) =>
            {
                var accuracy = new PrintedAccuracy<Volt>(share, 0, digits, Volts.Zero);
                var readings = ImmutableDictionary.CreateBuilder<string, BenchReading>();
                var isSurelyWithin = true;
                for (var index = 0; index < Pit.Points.Count; index++)
                {
                    var point = Pit.Points[index];
                    var scale = point.Open!.Value.High.Value / 9.45m;
                    var sign = point.Polarity == Core.Gear.Polarity.CentreNegative ? -1 : 1;
                    var (open, loaded) = (Shown(volts[2 * index] * scale * sign), Shown(volts[(2 * index) + 1] * scale * sign));
                    if (flaw == index)
                        open = Shown(-open.Value.Value);
                    isSurelyWithin &= flaw != index && Lies(open, point.Open.Value, accuracy) && Lies(loaded, point.Loaded!.Value, accuracy);
                    readings[point.Name] = new BenchReading { Open = open, Loaded = loaded };
                }

                var result = AcceptanceJudge.Judge(Pit, new BenchSession { VoltsAccuracy = accuracy, Readings = readings.ToImmutable() });
                return result.Verdict != AcceptanceVerdict.Accepted || isSurelyWithin;
            },
            iter: Rounds.Of(4000));

    private const string Repository18 = """
        rig: too much
        mains: 230 V 50 Hz
        loads:
          drive-1: { kind: analog drive, label: "9V DC 12mA centre negative" }
        supplies:
          brick: { label: "INPUT 100-240V~ 50/60Hz OUTPUT 18V DC 1A centre negative" }
        wired:
          - { from: brick/1, to: [drive-1] }
        """;

    private static bool Lies(DisplayedValue<Volt> shown, QuantityRange<Volt> range, PrintedAccuracy<Volt> accuracy)
    {
        var (size, off) = (Math.Abs(shown.Value.Value), accuracy.Within(shown.Value, shown.Step)!.Value.Value);
        return size - off >= range.Low.Value && size + off <= range.High.Value;
    }

    private static DisplayedValue<Volt> Shown(decimal volts) =>
        new(new Volts(Math.Round(volts, 2)), new Volts(0.01m)) { IsSigned = true };

    private static string Said(AcceptanceResult result) =>
        string.Join('\n', result.Because.Items.Concat(result.Measures.Items.Select(static one => one.Means)));

    private static AcceptanceResult Judge(AcceptancePlan plan, string readings)
    {
        var read = ReadingsReader.Read(readings, "readings", plan.Plugs);
        Assert.True(read.Session is not null, string.Join("\n", read.Errors));
        return AcceptanceJudge.Judge(plan, read.Session);
    }

    private static AcceptancePlan PlanOf(string text)
    {
        var reading = RigFileReader.Read(text, "rig");
        Assert.True(reading.Rig is not null, string.Join('\n', reading.Errors));
        return AcceptancePlan.Of(reading.Rig);
    }
}
