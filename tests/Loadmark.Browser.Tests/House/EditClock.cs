using System.Globalization;
using System.Text;

namespace Loadmark.Browser.Tests.House;

/// <summary>Edits a load's label to and fro, each time to another verdict, and lets the browser measure how long that takes.</summary>
/// <param name="page">The page, with the part for gear open.</param>
/// <param name="load">The load.</param>
internal sealed class EditClock(IPage page, string load)
{
    private const string Low = "9V DC 11mA centre negative 5.5x2.1";
    private const string High = "24V DC 900mA centre positive 5.5x2.5";

    // From the field's change to the verdict and the picture having changed, and to the frame that shows it.
    private const string Watch = """
        () => {
            window.measured = new Promise((done, fail) => {
                const verdict = () => document.querySelector(".bar .verdict")?.textContent;
                const before = verdict();
                let [began, drawn] = [0, false];
                const observer = new MutationObserver(changes => {
                    if (!began)
                        return;
                    drawn ||= changes.some(change => change.target instanceof Element && change.target.closest("section.drawing svg"));
                    if (!drawn || verdict() === before)
                        return;
                    observer.disconnect();
                    const changed = performance.now() - began;
                    requestAnimationFrame(() => setTimeout(() => done([changed, performance.now() - began])));
                });
                observer.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
                document.addEventListener("change", () => began = performance.now(), { capture: true, once: true });
                setTimeout(() => fail(new Error(`began ${began}, drawn ${drawn}, verdict ${before} and then ${verdict()}`)), 30000);
            });
        }
        """;

    /// <summary>Edits it again and again.</summary>
    /// <param name="count">How often.</param>
    /// <returns>For each edit, from the change event, how long until verdict and diagram had changed, and until a frame showed it, ms.</returns>
    public async Task<List<double[]>> MeasureAsync(int count)
    {
        var edits = new List<double[]>();
        var label = page.GetByLabel($"Label of {load}", new() { Exact = true });
        for (var edit = 0; edit < count; edit++)
        {
            await label.FillAsync(edit % 2 == 0 ? High : Low);
            await page.EvaluateAsync(Watch);
            await label.PressAsync("Enter");
            edits.Add(await page.EvaluateAsync<double[]>("() => window.measured"));
            await Expect(label).ToHaveValueAsync(edit % 2 == 0 ? High : Low);
        }

        return edits;
    }

    /// <summary>The smallest value that at least that share is not above, ms.</summary>
    public static double At(List<double[]> times, int which, double share)
    {
        var sorted = times.Select(pair => pair[which]).Order().ToList();
        return sorted[(int)Math.Ceiling(share * sorted.Count) - 1];
    }

    /// <summary>A rig of twelve loads, each on an outlet of its own.</summary>
    public static string TwelveLoads()
    {
        var rig = new StringBuilder("rig: Twelve\nloads:\n");
        for (var load = 1; load <= 12; load++)
            rig.Append(CultureInfo.InvariantCulture, $"  drive-{load}: {{ kind: analog drive, label: \"{Low}\" }}\n");
        rig.Append("supplies:\n  brick:\n    label: \"INPUT 100-240V~ 50/60Hz 0.6A\"\n    isolated: true\n    outlets:\n      1-12: { label: 9 V DC 150 mA, polarity: centre negative, plug: 5.5x2.1 }\nwired:\n");
        for (var load = 1; load <= 12; load++)
            rig.Append(CultureInfo.InvariantCulture, $"  - {{ from: brick/{load}, to: drive-{load} }}\n");
        return rig.ToString();
    }
}
