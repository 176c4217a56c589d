import { css, html, LitElement, type TemplateResult } from "lit";
import { qrCode } from "../components/qr-code.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import { type Device, type DevicesReply, deviceApi, type Offer } from "../device-api.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { historyApi } from "../history-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { momentText } from "../words/moment-text.ts";

/** How often it is looked whether the code has been used. */
const lookMs = 2000;

/** Other devices: pairing one with a code, and renaming or taking off those that are paired. */
export class DevicesView extends LitElement {
  static override properties = {
    offer: { state: true },
    address: { state: true },
    trouble: { state: true },
    renaming: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .two {
        display: grid;
        gap: 1rem 2rem;
        grid-template-columns: repeat(auto-fit, minmax(min(16rem, 100%), 1fr));
        align-items: start;
      }
      .code {
        font: 700 2rem / 1.4 var(--mono);
        letter-spacing: 0.1em;
        margin: 0;
      }
      .qr {
        display: block;
        width: 100%;
        max-width: 16rem;
      }
      code {
        overflow-wrap: anywhere;
        font-family: var(--mono);
        font-size: 0.85em;
      }
      li {
        padding: 0.6rem 0;
        border-top: 1px solid var(--line);
      }
      li input {
        max-width: 16rem;
      }
    `,
  ];
  declare private offer: Offer | undefined;
  declare private address: string | undefined;
  declare private trouble: string | undefined;
  declare private renaming: string | undefined;
  #look: ReturnType<typeof setInterval> | undefined;
  readonly #devices = new Fetched(this, deviceApi.devices, "nothing");
  readonly #ownName = new Fetched(this, historyApi.ownName, "nothing");

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.#look);
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#devices.again()}>
      <h1 tabindex="-1">Devices</h1>
      ${this.trouble ? html`<p class="ticket refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      ${whenReady(this.#devices.state, "the devices", (reply) => html`${this.renderPairing(reply)}${reply.isThisMachine ? this.renderOwnName() : ""}${this.renderDevices(reply)}${this.renderTrust(reply)}`)}
    </div>`;
  }

  private renderPairing({ isThisMachine, urls }: DevicesReply): TemplateResult {
    if (urls.length === 0)
      return emptyNote(
        "Other devices cannot reach this bench",
        "It is served to this machine only. To open it from a phone on the same network, start Ferrule with FERRULE_NETWORK=1. Nothing of it goes to the internet.",
      );
    if (!isThisMachine)
      return html`<p class="ticket">Codes are made, and devices renamed or taken off, at the machine where Ferrule runs.</p>`;
    return html`<section class="ticket stack" aria-labelledby="pair">
      <h2 id="pair">Pair a device</h2>
      ${this.offer ? this.renderOffer(this.offer, urls) : html`<p>The code is for one device. It works once, for five minutes.</p><button class="main" @click=${this.#makeCode}>Make a code</button>`}
    </section>`;
  }

  private renderOffer({ code, endsAt }: Offer, urls: readonly string[]): TemplateResult {
    const address = this.address ?? urls[0] ?? "";
    const target = `${address}/pair#${code}`;
    return html`<div class="two">
      <div>${qrCode(target, `QR code of the address ${target}`)}</div>
      <div class="stack">
        <p>Point the phone's camera at the square, or open <code>${address}</code> there and type:</p>
        <p class="code">${code.slice(0, 4)}-${code.slice(4)}</p>
        <p class="small soft" role="status">It ends at ${momentText(new Date(endsAt).toISOString())}.</p>
        ${urls.length > 1 ? this.renderAddresses(urls, address) : ""}
        <p class="small">The phone will warn about the address, since no public authority vouches for a machine of yours; go on past it, or see below.</p>
        <button @click=${this.#makeCode}>Another code</button>
      </div>
    </div>`;
  }

  private renderAddresses(urls: readonly string[], address: string): TemplateResult {
    return html`<div><label for="address">Address, where that one does not answer</label>
      <select id="address" @change=${(event: Event) => (this.address = (event.target as HTMLSelectElement).value)}>
        ${urls.map((url) => html`<option ?selected=${url === address}>${url}</option>`)}
      </select></div>`;
  }

  private renderOwnName(): TemplateResult {
    return html`<section class="ticket stack" aria-labelledby="own-name"><h2 id="own-name">This machine</h2>
      ${whenReady(
        this.#ownName.state,
        "its name",
        ({
          name,
        }) => html`<p class="why">What the history calls whoever works at this machine. A device is called by the name that it was paired with.</p>
        <form class="row" @submit=${this.#nameOwn}>
          <label for="this-name">Name in the history</label><input id="this-name" maxlength="60" autocomplete="off" placeholder="This machine" .value=${name ?? ""} />
          <button type="submit">Keep the name</button>
        </form>`,
      )}</section>`;
  }

  private renderDevices(reply: DevicesReply): TemplateResult | string {
    if (reply.devices.length === 0) return "";
    return html`<section class="ticket" aria-labelledby="paired"><h2 id="paired">Paired</h2>
      <ul class="plain">${reply.devices.map((device) => this.renderDevice(device, reply))}</ul></section>`;
  }

  private renderDevice(device: Device, { here, isThisMachine }: DevicesReply): TemplateResult {
    if (this.renaming === device.id) return this.renderRenaming(device);
    return html`<li class="row between">
      <span><b>${device.name}</b>${device.id === here ? " (this one)" : ""}<br /><span class="small soft">paired on ${device.pairedOn}, last seen on ${device.seenOn}</span></span>
      ${isThisMachine ? html`<span class="row"><button @click=${() => (this.renaming = device.id)} aria-label="Rename ${device.name}">Rename</button><button @click=${() => this.#revoke(device)} aria-label="Take off ${device.name}">Take off</button></span>` : ""}
    </li>`;
  }

  private renderRenaming(device: Device): TemplateResult {
    return html`<li><form class="row" @submit=${(event: Event) => this.#rename(event, device)}>
      <label for="rename">Name</label><input id="rename" maxlength="60" .value=${device.name} required />
      <button class="main" type="submit">Save</button><button type="button" @click=${() => (this.renaming = undefined)}>Leave it</button>
    </form></li>`;
  }

  private renderTrust({ fingerprint }: DevicesReply): TemplateResult | string {
    if (fingerprint === null) return "";
    return html`<section class="ticket stack" aria-labelledby="trust"><h2 id="trust">On the home screen, and without a signal</h2>
      <p>These, and sharing text from other apps, work only once the device trusts this machine's certificate. <a href="/trust">How that is done, and what works without it</a>.</p>
      <p>Fingerprint to compare: <code>${fingerprint}</code></p></section>`;
  }

  readonly #makeCode = (): Promise<void> =>
    this.#try(async () => {
      this.offer = await deviceApi.offer();
      clearInterval(this.#look);
      this.#look = setInterval(() => void this.#used(), lookMs);
    });

  /** Once the code is used or has ended, it goes and the device shows. */
  async #used(): Promise<void> {
    const { stands } = await deviceApi.stands().catch(() => ({ stands: true }));
    if (stands) return;
    clearInterval(this.#look);
    this.offer = undefined;
    await this.#devices.again();
  }

  readonly #nameOwn = (event: Event): Promise<void> => {
    event.preventDefault();
    const name = (event.target as HTMLFormElement).querySelector("input")?.value.trim() ?? "";
    return this.#try(async () => {
      await historyApi.changeOwnName(name === "" ? null : name);
      tell(this, "ferrule-done", { text: "Kept." });
      await this.#ownName.again();
    });
  };

  #rename(event: Event, { id }: Device): Promise<void> {
    event.preventDefault();
    const name = (event.target as HTMLFormElement).querySelector("input")?.value.trim() ?? "";
    return this.#try(async () => {
      await deviceApi.rename(id, name);
      this.renaming = undefined;
      await this.#devices.again();
    });
  }

  #revoke({ id, name }: Device): Promise<void> {
    return this.#try(async () => {
      await deviceApi.revoke(id);
      tell(this, "ferrule-done", { text: `${name} is taken off and can open the bench no more.` });
      await this.#devices.again();
    });
  }

  async #try(work: () => Promise<void>): Promise<void> {
    this.trouble = undefined;
    await work().catch((error: unknown) => {
      this.trouble = `${failed(error).message}.`;
    });
  }
}

customElements.define("ferrule-devices-view", DevicesView);
