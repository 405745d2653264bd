namespace Loadmark.Fuzz;

/// <summary>One door of the program that takes what others send.</summary>
internal abstract class Harness : IDisposable
{
    /// <summary>All of them, by the name that is typed.</summary>
    public static IReadOnlyDictionary<string, Func<Harness>> All { get; } = new Dictionary<string, Func<Harness>>(StringComparer.Ordinal)
    {
        ["labels"] = static () => new LabelHarness(),
        ["rigs"] = static () => new RigHarness(),
        ["tables"] = static () => new TableHarness(),
        ["backups"] = static () => new BackupHarness(),
        ["bodies"] = static () => new BodyHarness(),
    };

    /// <summary>What it begins with: files that it takes, by name.</summary>
    public abstract IEnumerable<(string Name, byte[] Content)> Seeds();

    /// <summary>Words that open further ways when they are put in.</summary>
    public virtual IEnumerable<string> Words => [];

    /// <summary>Takes what is sent. Whatever it throws is a fault of the program.</summary>
    /// <param name="input">What is sent.</param>
    public abstract void Take(byte[] input);

    /// <inheritdoc/>
    public virtual void Dispose()
    {
        // Most keep nothing.
    }

    /// <summary>The example files with an ending.</summary>
    protected static IEnumerable<(string Name, byte[] Content)> Examples(string pattern) =>
        Directory.GetFiles("examples", pattern).Order(StringComparer.Ordinal).Select(static path => (Path.GetFileName(path), File.ReadAllBytes(path)));

    /// <summary>Fails where something does not hold.</summary>
    protected static void Holds(bool condition, string what)
    {
        if (!condition)
            throw new InvalidOperationException(what);
    }
}
