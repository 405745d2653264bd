using Loadmark.Files;
using Loadmark.Storage;

namespace Loadmark.Workshop.DataFolders;

/// <summary>The rigs of an invented workshop that a new store begins with; the same files as in <c>examples/</c>.</summary>
public static class DemoRigs
{
    /// <summary>Adds the demo rigs, the one to look at first last.</summary>
    /// <param name="store">The store.</param>
    /// <param name="cancellation">Gives up.</param>
    public static async Task AddAsync(RigStore store, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(store);
        foreach (var name in (string[])["festival", "to-buy", "chain-start", "left-at-18", "pit"])
        {
            using var reader = new StreamReader(typeof(DemoRigs).Assembly.GetManifestResourceStream($"demo/{name}.rig.yaml")
                ?? throw new InvalidOperationException($"The demo rig {name} is not built in."));
            var text = await reader.ReadToEndAsync(cancellation);

            // The schema beside the examples is not beside a rig that is kept here.
            if (text.StartsWith("# yaml-language-server", StringComparison.Ordinal))
                text = text[(text.IndexOf('\n', StringComparison.Ordinal) + 1)..];
            var rig = RigFileReader.Read(text, name).Rig ?? throw new InvalidOperationException($"The demo rig {name} cannot be read.");
            await store.AddAsync(rig.Name, text, cancellation);
        }
    }
}
