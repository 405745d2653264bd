using System.Collections;

namespace Loadmark.Web.RequestIds;

/// <summary>
/// The id of a page that is open, which the log's lines of it carry and an error on it shows: that of the request that the page was opened
/// with. As a scope of the log it tells the id that is known when a line is written.
/// </summary>
/// <param name="ids">Gives an id of its own to what no page was opened for.</param>
public sealed class PageRequestId(RequestIdSource ids) : IReadOnlyList<KeyValuePair<string, object?>>
{
    private string? _id;

    /// <summary>The id of the request that the page was opened with; an id of its own where there was none.</summary>
    public string Id
    {
        get => _id ??= ids.Next();
        set => _id = value;
    }

    /// <inheritdoc/>
    public int Count => 1;

    /// <inheritdoc/>
    public KeyValuePair<string, object?> this[int index] =>
        index == 0
            ? new KeyValuePair<string, object?>("id", Id)
            : throw new ArgumentOutOfRangeException(nameof(index), index, "There is one entry.");

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, object?>> GetEnumerator()
    {
        yield return this[0];
    }

    /// <inheritdoc/>
    public override string ToString() => $"id:{Id}";

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
