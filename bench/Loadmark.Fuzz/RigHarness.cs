using System.Text;
using Loadmark.Core.Checks;
using Loadmark.Files;

namespace Loadmark.Fuzz;

/// <summary>A rig file: read or refused with a reason; what is read is judged, and written it reads as the same rig.</summary>
internal sealed class RigHarness : Harness
{
    /// <inheritdoc/>
    public override IEnumerable<string> Words =>
    [
        "rig: ", "mains: ", "headroom: ", "loads:", "supplies:", "leads:", "wired:", "signal:", "outlets: ", "label: ", "from: ", "to: ", "lead: ", "type: ", "kind: ",
        "run: ", "start: ", " for ", "pinned: true", "isolated: ", "overload: hiccup", "daisy chain", "series", "parallel", "joined: ", "1-4", "&a", "*a", "!!", "|", ">", "<<: ", "? ",
    ];

    /// <inheritdoc/>
    public override IEnumerable<(string Name, byte[] Content)> Seeds() =>
        Examples("*.rig.yaml").Append(("json", Encoding.UTF8.GetBytes("""{"rig":"a","loads":{"delay-2":"9V DC 300mA"},"supplies":{"brick":{"outlets":{"1":"9 V 500 mA"}}},"wired":[{"from":"brick/1","to":"delay-2"}]}""")));

    /// <inheritdoc/>
    public override void Take(byte[] input)
    {
        using var stream = new MemoryStream(input);
        var (reading, _) = RigFileReader.ReadWithText(stream, "fuzz");
        Holds(reading.Rig is not null || !reading.Errors.IsEmpty, "Refused without a reason.");
        if (reading.Rig is not { } rig)
            return;
        NameplateCheck.Of(rig);
        var again = RigFileReader.Read(RigFileWriter.Write(rig), "written");
        Holds(again.Rig is not null, $"What was written is refused: {string.Join(' ', again.Errors)}");
        Holds(again.Rig == rig, "What was written reads as another rig.");
    }
}
