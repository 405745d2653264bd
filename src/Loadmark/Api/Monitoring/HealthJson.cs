using Loadmark.Shapes;

namespace Loadmark.Api.Monitoring;

/// <summary>Whether the program and the rigs' store are well as JSON.</summary>
internal static class HealthJson
{
    private static JsonShape<HealthReport> Store { get; } = new JsonShape<HealthReport>("", "The store of rigs.")
        .Flag("isOpen", static report => report.Trouble is null, "Whether rigs can be read and kept.")
        .Text("trouble", static report => report.Trouble, "What is wrong and what to do; null where nothing is.", Presence.OrNull);

    /// <summary>The shape of the server's health.</summary>
    public static JsonShape<HealthReport> Health { get; } = new JsonShape<HealthReport>(
            "Health", "Whether the program and the store of rigs are well.")
        .Word(
            "status", static report => report.Trouble is null ? "well" : "ill", static () => ["well", "ill"],
            "All is well, or something is not.")
        .Text("version", static _ => typeof(HealthJson).Assembly.GetName().Version?.ToString(3), "The program's version.")
        .Figure("uptimeSeconds", static report => report.UptimeSeconds, "How long it has been running, s.")
        .Value("store", static report => report, Store);
}
