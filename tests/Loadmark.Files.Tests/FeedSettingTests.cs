using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Tests;

/// <summary>The setting of an outlet against the modes of its label, with labels whose modes are given here.</summary>
public sealed class FeedSettingTests
{
    [Theory]
    [InlineData("brick/5", "15 V", "brick/5 has no 15 V setting: 9 V, 12 V, 18 V")]
    [InlineData("brick/5", "12 V", null)]
    [InlineData("brick/6", "11 V", null)]
    [InlineData("brick/6", "19 V", "brick/6 has no 19 V setting: 9 V to 18 V")]
    [InlineData("brick/7", "24 V", null)]
    [InlineData("brick/7", "9 V", "brick/7 has no 9 V setting: 24 V")]
    [InlineData("brick/8", "9 V", "brick/8 has no 9 V setting: 24 V")] // its label says something, but no voltage
    [InlineData("dumb/1", "400 V", null)]
    [InlineData("dumb/2", "9 V", null)]
    public void Must_be_one_that_the_label_gives(string outlet, string at, string? message)
    {
        var brick = new Supply
        {
            Id = "brick",
            Label = Label("supply", (24, 24)),
            Outlets = [Outlet("5", Label("x", (9, 9), (12, 12), (18, 18))), Outlet("6", Label("x", (9, 18))), Outlet("7", Label("")), Outlet("8", Label("centre negative"))],
        };
        var amps = new Nameplate("100 mA; 200 mA") { Modes = [Current(0.1m), Current(0.2m)] };
        var dumb = new Supply { Id = "dumb", Outlets = [Outlet("1", Label("x")), Outlet("2", amps)] };
        var errors = new ErrorList("f");
        var index = new RigIndex([new Load { Id = "x" }], [brick, dumb], []);
        new FeedReader(index, errors).Read(TreeReader.Read($"{{ from: {outlet}, at: {at}, to: x }}", errors)!);
        if (message is null)
        {
            Assert.Empty(errors.ToArray());

            // What the reader lets through, the check must be able to set.
            var feed = new Feed { From = [new OutletRef(outlet.Split('/')[0], outlet.Split('/')[1])], At = [Volts(at)], To = ["x"] };
            WiredRig.Of(new Rig { Name = "r", Loads = [new Load { Id = "x" }], Supplies = [brick, dumb], Wired = (ValueList<Feed>)[feed] });
        }
        else
        {
            Assert.Contains(message, Assert.Single(errors.ToArray()).Message, StringComparison.Ordinal);
        }
    }

    private static Volts Volts(string text)
    {
        Assert.True(QuantityReader.TryRead<Volt>(text, out var volts, out var problem), problem);
        return volts;
    }

    private static Mode Current(decimal amps) => new(null, new Figure<Amps>(new Amps(amps), Origin.Stated), null);

    private static Outlet Outlet(string id, Nameplate label) => new() { Id = id, Label = label };

    private static Nameplate Label(string text, params (decimal Low, decimal High)[] volts) => new(text)
    {
        Modes = [.. volts.Select(range => new Mode(new QuantityRange<Volt>(new(range.Low), new(range.High)), null, null))],
    };
}
