using System.Text;
using Loadmark.Files.Library;
using Loadmark.Files.PriceLists;

namespace Loadmark.Fuzz;

/// <summary>A table or file of gear, and a price list: read, or refused with a reason.</summary>
internal sealed class TableHarness : Harness
{
    private static readonly string[] Names = ["fuzz.csv", "fuzz.tsv", "fuzz.yaml"];

    /// <inheritdoc/>
    public override IEnumerable<string> Words =>
        ["tag", "supply", "lead", "label", "outlets", "price", "mass_g", "total", "isolated", "mains", "words", "count", "plugs", "length", "yes", "no", "\"", "\"\"", ",", ";", "\t", "\r\n", " | ", "1-4: ", "=", "@"];

    /// <inheritdoc/>
    public override IEnumerable<(string Name, byte[] Content)> Seeds() =>
        Examples("*.csv").Concat(
        [
            ("loads", Encoding.UTF8.GetBytes("tag,label,name,words\ndelay-2,9V DC 300mA,Delay,pit; spare\ndrive-3,\"9V DC, 12 mA\",,\n")),
            ("supplies", Encoding.UTF8.GetBytes("supply;outlet;label;isolated\nbrick;1-4;9 V 100 mA;yes\nbrick;5;9/12/18 V 500 mA;yes\n")),
            ("leads", Encoding.UTF8.GetBytes("lead\ttype\tplugs\ttail\nlong chain\tdaisy chain\t5\t0.5 m\n")),
            ("gear", File.ReadAllBytes("examples/clean.rig.yaml")),
        ]);

    /// <inheritdoc/>
    public override void Take(byte[] input)
    {
        foreach (var name in Names)
        {
            var gear = GearFileReader.Read(input, name);
            Holds(!gear.Errors.IsEmpty || !gear.Rows.IsDefault, "Nothing is said of a file of gear.");
            foreach (var row in gear.Rows)
                Holds(row.Piece is null != row.Refusal is null, "A row is neither taken nor refused.");
        }

        var prices = PriceListReader.Read(Encoding.UTF8.GetString(input), "fuzz.csv");
        Holds(prices.Offers is not null || !prices.Errors.IsEmpty, "A price list is refused without a reason.");
    }
}
